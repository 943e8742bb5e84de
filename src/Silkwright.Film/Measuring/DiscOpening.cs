using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Silkwright.Film.Readers;

namespace Silkwright.Film.Measuring;

/// <summary>What opening by a digital disc removes, worked out in tiles of packed rows.</summary>
/// <remarks>
/// The disc is taken row by row. Where its run of n pixels fits into a row is found by doubling (runs of 1, 2, 4 ... and one overlap);
/// the erosion is the AND of those rows, the dilation the OR of the same runs put back. Outside the film there is neither image nor gap:
/// a disc lies wholly on the film. One instance serves one thread.
/// </remarks>
internal sealed class DiscOpening
{
    /// <summary>Words across a tile with its margins.</summary>
    private const int WindowWords = 32;

    /// <summary>Zero words before and after each row, so that shifts may read past its ends: a disc's width and a vector more.</summary>
    private const int Pad = 8;

    private const int Stride = WindowWords + (2 * Pad);
    private const int MostTileRows = 256;
    private const int MostRows = MostTileRows + (2 * DigitalDisc.MostDiameter);

    private readonly ulong[] source = new ulong[Stride * MostRows];
    private readonly ulong[] fits = new ulong[Stride * MostRows];
    private readonly ulong[] opened = new ulong[Stride * MostTileRows];
    private readonly ulong[] runs = new ulong[Stride * 9];
    private readonly ulong[] work = new ulong[Stride];
    private readonly ulong[] any = new ulong[WindowWords];
    private readonly ulong[] all = new ulong[WindowWords];

    /// <summary>The words worked on, a whole number of vectors.</summary>
    private int from;
    private int to;

    /// <summary>Words of the tile and its margins.</summary>
    private int window;

    /// <summary>Words of film a tile covers for a disc.</summary>
    public static int TileWords(int diameter) => WindowWords - (2 * Margin(diameter));

    /// <summary>Rows of film a tile covers: more for larger discs, whose margins are worked on twice.</summary>
    public static int TileRows(int diameter) => diameter <= 20 ? 64 : diameter <= 64 ? 128 : MostTileRows;

    /// <summary>Works out one tile.</summary>
    /// <param name="bits">The film.</param>
    /// <param name="gap">Open the gap instead of the image.</param>
    /// <param name="disc">The disc.</param>
    /// <param name="tile">On the film, and no larger than <see cref="TileWords"/> by <see cref="TileRows"/>.</param>
    /// <param name="row">Given each row's number and what was removed from it, in the tile's words.</param>
    /// <remarks>A tile that is all image or all gap, margins included, has nothing removed and gives no rows.</remarks>
    public void Residue(PackedBitmap bits, bool gap, DigitalDisc disc, OpeningTile tile, RowSink row)
    {
        var margin = Margin(disc.Diameter);
        var above = disc.Diameter - 1;
        window = tile.Words + (2 * margin);
        Load(bits, gap, tile.Word - margin, tile.Row - above, tile.Rows + (2 * above));
        if (!ChooseColumns(margin))
            return;
        Erode(disc, tile.Rows + above);
        Dilate(disc, tile.Rows, above);
        Span<ulong> removed = stackalloc ulong[WindowWords];
        for (var y = 0; y < tile.Rows; y++)
        {
            removed.Clear();
            for (var i = Math.Max(from, margin); i < Math.Min(to, margin + tile.Words); i++)
                removed[i - margin] = source[((y + above) * Stride) + Pad + i] & ~opened[(y * Stride) + Pad + i];
            row(tile.Row + y, removed[..tile.Words]);
        }
    }

    private static int Margin(int diameter) => (diameter + 62) >> 6;

    /// <summary>Copies the tile and its margins, and notes what each column of words holds.</summary>
    private void Load(PackedBitmap bits, bool gap, int firstWord, int firstRow, int rows)
    {
        PackedRows.Fill(any, 0);
        PackedRows.Fill(all, ulong.MaxValue);
        var (left, right) = (Math.Max(0, firstWord), Math.Min(bits.Stride, firstWord + window));
        for (var y = 0; y < rows; y++)
        {
            var into = source.AsSpan((y * Stride) + Pad, WindowWords);
            PackedRows.Fill(into, 0);
            if (firstRow + y >= 0 && firstRow + y < bits.Height)
            {
                var part = into[(left - firstWord)..(right - firstWord)];
                bits.Row(firstRow + y)[left..right].CopyTo(part);
                if (gap)
                    PackedBitmap.Invert(part, right == bits.Stride ? bits.LastMask : ulong.MaxValue);
            }

            PackedRows.Gather(into, any, all);
        }
    }

    /// <summary>
    /// Narrows the work to the columns of words where image and gap meet, with two margins: within one margin of them something can be
    /// removed, and what is outside the work can spoil no more than one margin inside it. False where nothing can be removed.
    /// </summary>
    private bool ChooseColumns(int margin)
    {
        var (first, last) = (window, -1);
        for (var i = 0; i < window; i++)
        {
            var uniform = any[i] == 0 || all[i] == ulong.MaxValue;
            if (uniform && (i == 0 || any[i] == any[i - 1]))
                continue;
            first = Math.Min(first, uniform ? i - 1 : i);
            last = i;
        }

        var vector = Vector<ulong>.Count;
        from = Math.Max(0, first - (2 * margin)) & ~(vector - 1);
        to = (Math.Min(window, last + 1 + (2 * margin)) + vector - 1) & ~(vector - 1);
        return last >= 0;
    }

    /// <summary>Bit x of fits row y: the disc's box with its corner at (x, y) of the window lies in the source.</summary>
    private void Erode(DigitalDisc disc, int rows)
    {
        PackedRows.Fill(fits.AsSpan(0, rows * Stride), ulong.MaxValue);
        var lastRow = rows + disc.Diameter - 1;
        var cleared = 0;
        for (var y = 0; y < lastRow; y++)
        {
            var row = source.AsSpan((y * Stride) + Pad + from, to - from);
            if (PackedRows.IsAll(row, ulong.MaxValue))
                continue;
            if (PackedRows.IsAll(row, 0))
            {
                // No disc holds an empty row; those a row above it have ruled out need not be cleared again.
                var first = Math.Max(cleared, y - disc.Diameter + 1);
                cleared = Math.Max(cleared, Math.Min(rows, y + 1));
                if (first < cleared)
                    PackedRows.Fill(fits.AsSpan(first * Stride, (cleared - first) * Stride), 0);
                continue;
            }

            BuildRuns(source.AsSpan(y * Stride, Stride), disc.Diameter, fitting: true);
            foreach (var group in disc.Widths)
            {
                var k = BitOperations.Log2((uint)group.Length);
                var run = runs.AsSpan(k * Stride, Stride);
                AndShiftedLeft(run, group.Inset, group.Inset + group.Length - (1 << k), work);
                foreach (var j in group.Rows)
                {
                    if (y - j >= 0 && y - j < rows)
                        PackedRows.And(fits.AsSpan(((y - j) * Stride) + Pad + from, to - from), work.AsSpan(Pad + from, to - from));
                }
            }
        }
    }

    private void Dilate(DigitalDisc disc, int rows, int above)
    {
        PackedRows.Fill(opened.AsSpan(0, rows * Stride), 0);
        for (var y = 0; y < rows + above; y++)
        {
            var row = fits.AsSpan(y * Stride, Stride);
            row[..(Pad + from)].Clear();
            row[(Pad + to)..].Clear();
            if (PackedRows.IsAll(row[(Pad + from)..(Pad + to)], 0))
                continue;
            BuildRuns(row, disc.Diameter, fitting: false);
            foreach (var group in disc.Widths)
            {
                var k = BitOperations.Log2((uint)group.Length);
                var run = runs.AsSpan(k * Stride, Stride);
                OrShiftedRight(run, group.Inset, group.Inset + group.Length - (1 << k), work);
                foreach (var j in group.Rows)
                {
                    // The box row j of a disc at row y lies at row y + j of the window, which is row y + j - above of the tile.
                    var at = y + j - above;
                    if (at >= 0 && at < rows)
                        PackedRows.Or(opened.AsSpan((at * Stride) + Pad + from, to - from), work.AsSpan(Pad + from, to - from));
                }
            }
        }
    }

    /// <summary>
    /// Level k, fitting: bit x says that x .. x + 2^k - 1 are all set; else, that any of x - 2^k + 1 .. x is.
    /// </summary>
    private void BuildRuns(ReadOnlySpan<ulong> row, int most, bool fitting)
    {
        row.CopyTo(runs);
        for (var k = 1; 1 << k <= most; k++)
        {
            var below = runs.AsSpan((k - 1) * Stride, Stride);
            var level = runs.AsSpan(k * Stride, Stride);

            // What lies beside the work is only read; there the level below is near enough, and what it spoils is margin.
            below[..(Pad + from)].CopyTo(level);
            below[(Pad + to)..].CopyTo(level[(Pad + to)..]);
            if (fitting)
                AndShiftedLeft(below, 0, 1 << (k - 1), level);
            else
                OrShiftedRight(below, 0, 1 << (k - 1), level);
        }
    }

    /// <summary>into = row moved left by one number of pixels AND row moved by another.</summary>
    private void AndShiftedLeft(ReadOnlySpan<ulong> row, int pixels, int others, Span<ulong> into)
    {
        ref var one = ref MemoryMarshal.GetReference(row[(pixels >> 6)..]);
        ref var two = ref MemoryMarshal.GetReference(row[(others >> 6)..]);
        ref var at = ref MemoryMarshal.GetReference(into);
        (pixels, others) = (pixels & 63, others & 63);
        for (var i = Pad + from; i < Pad + to; i += Vector<ulong>.Count)
            (MovedLeft(ref one, i, pixels) & MovedLeft(ref two, i, others)).StoreUnsafe(ref at, (nuint)i);
    }

    /// <summary>into = row moved right by one number of pixels OR row moved by another.</summary>
    private void OrShiftedRight(ReadOnlySpan<ulong> row, int pixels, int others, Span<ulong> into)
    {
        ref var start = ref MemoryMarshal.GetReference(row);
        ref var at = ref MemoryMarshal.GetReference(into);
        var (oneWords, twoWords) = (pixels >> 6, others >> 6);
        (pixels, others) = (pixels & 63, others & 63);
        for (var i = Pad + from; i < Pad + to; i += Vector<ulong>.Count)
            (MovedRight(ref start, i - oneWords, pixels) | MovedRight(ref start, i - twoWords, others)).StoreUnsafe(ref at, (nuint)i);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<ulong> MovedLeft(ref ulong row, int i, int bits) => bits == 0
        ? Vector.LoadUnsafe(ref row, (nuint)i)
        : (Vector.LoadUnsafe(ref row, (nuint)i) << bits) | (Vector.LoadUnsafe(ref row, (nuint)(i + 1)) >>> (64 - bits));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<ulong> MovedRight(ref ulong row, int i, int bits) => bits == 0
        ? Vector.LoadUnsafe(ref row, (nuint)i)
        : (Vector.LoadUnsafe(ref row, (nuint)i) >>> bits) | (Vector.LoadUnsafe(ref row, (nuint)(i - 1)) << (64 - bits));
}
