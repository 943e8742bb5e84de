using System.Buffers;
using System.Collections.Concurrent;
using System.Numerics;

namespace Silkwright.Film.Measuring;

/// <summary>The 8-connected pieces of what an opening removes, each with whether it was a whole component.</summary>
/// <remarks>What is removed is put together band by band and forgotten again, so that of a large film only the bands at work take memory.</remarks>
/// <param name="bits">The film.</param>
/// <param name="tiles">Its openings.</param>
/// <param name="mask">Parts of what is removed that do not count; none: all counts.</param>
/// <param name="bandRows">Rows of a band, a multiple of <see cref="DiscOpening.MostTileRows"/>; the answer does not depend on it.</param>
/// <param name="cancel">Stops the work.</param>
internal sealed class ResiduePieces(FilmBitmap bits, OpeningTiles tiles, FilmBitmap? mask, int bandRows, CancellationToken cancel)
{
    /// <summary>Bands of a film that is not so high that they would be higher than <see cref="MostBandRows"/>: enough to keep all cores at work.</summary>
    private const int FewestBands = 12;

    /// <summary>What is removed from a band is kept whole meanwhile: memory must not grow with a film's height.</summary>
    private const int MostBandRows = 4096;

    /// <summary>How far about a piece's centre is looked first. [px]</summary>
    private const int LeastReach = 16;

    private readonly ConcurrentBag<FilmBitmap> rooms = [];

    public ResiduePieces(FilmBitmap bits, OpeningTiles tiles, FilmBitmap? mask, CancellationToken cancel)
        : this(bits, tiles, mask, EvenBands(bits.Height), cancel)
    {
    }

    /// <summary>Finds the pieces, at least those in the marked cells; one that touches what the opening left is <see cref="Blob.Marked"/>.</summary>
    /// <param name="diameter">The disc's. [px]</param>
    /// <param name="only">Cells that are looked at; none: all.</param>
    /// <param name="found">Takes each piece, from several threads: pieces that end in one band from one of them.</param>
    /// <param name="touched">Has a mark in every cell that a piece has a pixel in when the piece is handed on; none: nobody asks.</param>
    /// <param name="progress">Told the share done, 0 to 1.</param>
    public void Find(int diameter, TileMap? only, Action<Blob> found, TileMap? touched = null, IProgress<double>? progress = null)
    {
        var disc = new DigitalDisc(diameter);
        var work = tiles.Tiles(diameter, only).ToLookup(tile => tile.Row / bandRows);
        var bands = new BandComponents[(bits.Height + bandRows - 1) / bandRows];
        var done = 0;
        var cores = new ParallelOptions { CancellationToken = cancel, MaxDegreeOfParallelism = Environment.ProcessorCount };
        _ = Parallel.For(0, bands.Length, cores, b =>
        {
            bands[b] = new BandComponents(found);
            AddBand(bands[b], b * bandRows, disc, work[b], touched);
            progress?.Report((double)Interlocked.Increment(ref done) / bands.Length);
        });
        for (var b = 1; b < bands.Length; b++)
            MarkAcross(bands[b - 1], bands[b], b * bandRows);
        foreach (var piece in ComponentSeams.Join(bands))
            found(piece);
    }

    /// <summary>The pixel that the disc removes nearest to the centre of one of its pieces, within the piece's box.</summary>
    /// <remarks>It is opened again about there: that is less than to remember what was removed.</remarks>
    public (int X, int Y) Place(int diameter, in Blob piece)
    {
        var disc = new DigitalDisc(diameter);
        var (cx, cy) = (piece.SumX / piece.Area, piece.SumY / piece.Area);
        for (var reach = LeastReach; ; reach *= 2)
        {
            var (left, right) = (Math.Max(piece.Left, (int)cx - reach), Math.Min(piece.Right, (int)cx + reach));
            var (top, bottom) = (Math.Max(piece.Top, (int)cy - reach), Math.Min(piece.Bottom + 1, (int)cy + reach));
            var residue = Room(bottom - top);
            tiles.Fill(disc, DiscOpening.Tiles(diameter, left, right, top, bottom), mask, residue, top, null);
            var (best, least) = ((piece.SeedX, piece.SeedY), double.MaxValue);
            for (var y = top; y < bottom; y++)
            {
                for (var word = left >> 6; word << 6 < right; word++)
                {
                    for (var rest = residue.Word(y - top, word) & BitRow.Between(word, left, right); rest != 0; rest &= rest - 1)
                    {
                        var x = (word << 6) + 63 - BitOperations.TrailingZeroCount(rest);
                        if (Square(x + 0.5 - cx) + Square(y + 0.5 - cy) is var d && d < least)
                            (best, least) = ((x, y), d);
                    }
                }
            }

            rooms.Add(residue);

            // Outside the window nothing is nearer than its edge.
            if (least <= Square(reach - 1) || (left == piece.Left && right == piece.Right && top == piece.Top && bottom == piece.Bottom + 1))
                return best;
        }
    }

    private static double Square(double value) => value * value;

    private static int EvenBands(int height)
    {
        var blocks = (height + DiscOpening.MostTileRows - 1) / DiscOpening.MostTileRows;
        return Math.Min(MostBandRows, (blocks + FewestBands - 1) / FewestBands * DiscOpening.MostTileRows);
    }

    private void AddBand(BandComponents pieces, int top, DigitalDisc disc, IEnumerable<OpeningTile> work, TileMap? touched)
    {
        if (!work.Any())
        {
            pieces.AddRow([], top);
            return;
        }

        var residue = Room(bandRows);
        tiles.Fill(disc, work, mask, residue, top, touched);
        AddRows(pieces, residue, top, Math.Min(bandRows, bits.Height - top));
        rooms.Add(residue);
    }

    /// <summary>A blank bitmap as wide as the film; it is given back to <see cref="rooms"/>.</summary>
    private FilmBitmap Room(int rows)
    {
        if (!rooms.TryTake(out var room) || room.Height < rows)
            room = new FilmBitmap(bits.Width, Math.Max(rows, bandRows));
        room.Clear();
        return room;
    }

    private void AddRows(BandComponents pieces, FilmBitmap residue, int top, int rows)
    {
        var edges = ArrayPool<int>.Shared.Rent(bits.Width + 2);
        var touches = ArrayPool<bool>.Shared.Rent((bits.Width / 2) + 2);
        for (var y = 0; y < rows;)
        {
            cancel.ThrowIfCancellationRequested();
            var end = Math.Min(rows, y + FilmBitmap.CellRows);
            if (residue.IsBlank(y / FilmBitmap.CellRows) && y > 0 && end < rows)
            {
                pieces.AddRow([], top + y);
                y = end;
            }

            for (; y < end; y++)
            {
                var count = residue.Edges(y, edges);
                for (var i = 0; i < count; i += 2)
                    touches[i / 2] = Touches(residue, top, y, rows, edges[i], edges[i + 1]);
                pieces.AddRow(edges.AsSpan(0, count), top + y, touches);
            }
        }

        ArrayPool<int>.Shared.Return(edges);
        ArrayPool<bool>.Shared.Return(touches);
    }

    /// <summary>Whether a run of a band's residue has a pixel beside it, above or below it in the band that the opening left.</summary>
    private bool Touches(FilmBitmap residue, int top, int y, int rows, int from, int to)
    {
        var (left, right) = (Math.Max(0, from - 1), Math.Min(bits.Width, to + 1));
        for (var j = Math.Max(0, y - 1); j <= Math.Min(rows - 1, y + 1); j++)
        {
            for (var word = left >> 6; word << 6 < right; word++)
            {
                if ((tiles.Opened(top + j, word) & ~residue.Word(j, word) & BitRow.Between(word, left, right)) != 0)
                    return true;
            }
        }

        return false;
    }

    /// <summary>Marks the pieces that touch, across the seam of two bands, what the opening left.</summary>
    private void MarkAcross(BandComponents upper, BandComponents lower, int lowerTop)
    {
        if (upper.LastRow.IsEmpty && lower.FirstRow.Length == 0)
            return;
        upper.MarkLastRow(LeftIn(lowerTop, lower.FirstRow));
        lower.MarkFirstRow(LeftIn(lowerTop - 1, upper.LastRow));
    }

    /// <summary>What the opening left of a row, from the runs of what it removed.</summary>
    private ulong[] LeftIn(int y, ReadOnlySpan<BandComponents.Run> removed)
    {
        var left = new ulong[bits.Stride];
        for (var word = 0; word < left.Length; word++)
            left[word] = tiles.Opened(y, word);
        foreach (var run in removed)
        {
            for (var word = run.From >> 6; word << 6 < run.To; word++)
                left[word] &= ~BitRow.Between(word, run.From, run.To);
        }

        return left;
    }
}
