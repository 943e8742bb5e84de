using System.Numerics;

namespace Silkwright.Film.Measuring;

/// <summary>The 8-connected pieces of what an opening removed, each with whether it was a whole component.</summary>
internal static class ResiduePieces
{
    private const int MostBands = 8;

    /// <summary>The pieces that are wanted; one that touches what the opening left is <see cref="Blob.Marked"/>.</summary>
    public static List<Blob> Find(FilmBitmap bits, bool gap, FilmBitmap residue, Predicate<Blob> wanted, CancellationToken cancel)
    {
        var cells = (bits.CellsDown + MostBands - 1) / MostBands;
        var found = new List<Blob>[(bits.CellsDown + cells - 1) / cells];
        var bands = new BandComponents[found.Length];
        var cores = new ParallelOptions { CancellationToken = cancel, MaxDegreeOfParallelism = Environment.ProcessorCount };
        _ = Parallel.For(0, bands.Length, cores, b =>
        {
            found[b] = [];
            bands[b] = new BandComponents(piece => Keep(piece, found[b]));
            AddRows(bands[b], bits, gap, residue, b * cells, Math.Min(bits.CellsDown, (b + 1) * cells), cancel);
        });
        var seams = new List<Blob>();
        foreach (var piece in ComponentSeams.Join(bands))
            Keep(piece, seams);
        return [.. found.SelectMany(pieces => pieces), .. seams];

        void Keep(Blob piece, List<Blob> into)
        {
            if (wanted(piece))
                into.Add(piece);
        }
    }

    private static void AddRows(BandComponents pieces, FilmBitmap bits, bool gap, FilmBitmap residue, int firstCell, int endCell, CancellationToken cancel)
    {
        var edges = new int[bits.Width + 2];
        var touches = new bool[(bits.Width / 2) + 2];
        for (var cell = firstCell; cell < endCell; cell++)
        {
            cancel.ThrowIfCancellationRequested();
            var (top, bottom) = (cell * FilmBitmap.CellRows, Math.Min(bits.Height, (cell + 1) * FilmBitmap.CellRows));
            if (residue.IsBlank(cell) && cell > firstCell && cell < endCell - 1)
            {
                pieces.AddRow([], top);
                continue;
            }

            for (var y = top; y < bottom; y++)
            {
                var count = residue.Edges(y, edges);
                for (var i = 0; i < count; i += 2)
                    touches[i / 2] = Touches(bits, gap, residue, y, edges[i], edges[i + 1]);
                pieces.AddRow(edges.AsSpan(0, count), y, touches);
            }
        }
    }

    /// <summary>Marks the cells that hold pixels of the pieces that are wanted, and perhaps some more.</summary>
    public static TileMap Tiles(FilmBitmap film, FilmBitmap residue, IReadOnlyList<Blob> wanted)
    {
        var map = new TileMap(film);
        var boxes = wanted.Sum(b => (long)b.Height * ((b.Width >> 6) + 2));
        IEnumerable<Blob> parts = boxes <= (long)film.Stride * film.Height
            ? wanted
            : [new Blob { Right = residue.Width, Bottom = residue.Height - 1 }];
        foreach (var blob in parts)
        {
            for (var y = blob.Top; y <= blob.Bottom; y++)
            {
                for (var word = blob.Left >> 6; word <= (blob.Right - 1) >> 6; word++)
                {
                    if (residue.Word(y, word) != 0)
                        map.Mark(word, y);
                }
            }
        }

        return map;
    }

    /// <summary>The residue's pixel nearest to the centre of a piece, within the piece's box.</summary>
    public static (int X, int Y) Place(FilmBitmap residue, in Blob blob)
    {
        var (cx, cy) = (blob.SumX / blob.Area, blob.SumY / blob.Area);
        var best = (X: blob.SeedX, Y: blob.SeedY);
        var least = Distance2(best.X, best.Y, cx, cy);
        foreach (var y in Enumerable.Range(blob.Top, blob.Height).OrderBy(y => Math.Abs(y + 0.5 - cy)))
        {
            var dy = y + 0.5 - cy;
            if (dy * dy >= least)
                break;
            for (var word = blob.Left >> 6; word <= (blob.Right - 1) >> 6; word++)
            {
                for (var rest = residue.Word(y, word); rest != 0; rest &= rest - 1)
                {
                    var x = (word << 6) + 63 - BitOperations.TrailingZeroCount(rest);
                    if (x >= blob.Left && x < blob.Right && Distance2(x, y, cx, cy) is var d && d < least)
                        (best, least) = ((x, y), d);
                }
            }
        }

        return best;
    }

    private static double Distance2(int x, int y, double cx, double cy) => ((x + 0.5 - cx) * (x + 0.5 - cx)) + ((y + 0.5 - cy) * (y + 0.5 - cy));

    private static bool Touches(FilmBitmap bits, bool gap, FilmBitmap residue, int y, int from, int to)
    {
        var (left, right) = (Math.Max(0, from - 1), Math.Min(bits.Width, to + 1));
        for (var j = Math.Max(0, y - 1); j <= Math.Min(bits.Height - 1, y + 1); j++)
        {
            for (var word = left >> 6; word << 6 < right; word++)
            {
                var set = bits.Word(j, word);
                if (((gap ? ~set : set) & ~residue.Word(j, word) & BitRow.Between(word, left, right)) != 0)
                    return true;
            }
        }

        return false;
    }
}
