using System.Numerics;
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

    /// <summary>Words of film a tile covers for a disc.</summary>
    public static int TileWords(int diameter) => WindowWords - (2 * Margin(diameter));

    /// <summary>Rows of film a tile covers: more for larger discs, whose margins are worked on twice.</summary>
    public static int TileRows(int diameter) => diameter <= 20 ? 64 : diameter <= 64 ? 128 : MostTileRows;

    /// <summary>Works out one tile.</summary>
    /// <param name="bits">The film.</param>
    /// <param name="gap">Open the gap instead of the image.</param>
    /// <param name="disc">The disc.</param>
    /// <param name="firstWord">Left edge of the tile. [word]</param>
    /// <param name="firstRow">Top edge of the tile.</param>
    /// <param name="row">Given each row's number and what was removed from it, in <see cref="TileWords"/> words or fewer at the right edge.</param>
    /// <remarks>A tile that is all image or all gap, margins included, has nothing removed and gives no rows.</remarks>
    public void Residue(PackedBitmap bits, bool gap, DigitalDisc disc, int firstWord, int firstRow, RowSink row)
    {
        var margin = Margin(disc.Diameter);
        var rows = Math.Min(TileRows(disc.Diameter), bits.Height - firstRow);
        var above = disc.Diameter - 1;
        Load(bits, gap, firstWord - margin, firstRow - above, rows + (2 * above));
        if (!ChooseColumns(margin))
            return;
        Erode(disc, rows + above);
        Dilate(disc, rows, above);
        var words = Math.Min(TileWords(disc.Diameter), bits.Stride - firstWord);
        Span<ulong> removed = stackalloc ulong[WindowWords];
        for (var y = 0; y < rows; y++)
        {
            removed.Clear();
            for (var i = Math.Max(from, margin); i < Math.Min(to, margin + words); i++)
                removed[i - margin] = source[((y + above) * Stride) + Pad + i] & ~opened[(y * Stride) + Pad + i];
            row(firstRow + y, removed[..words]);
        }
    }

    private static int Margin(int diameter) => (diameter + 62) >> 6;

    /// <summary>Copies the tile and its margins, and notes what each column of words holds.</summary>
    private void Load(PackedBitmap bits, bool gap, int firstWord, int firstRow, int rows)
    {
        any.AsSpan().Clear();
        all.AsSpan().Fill(ulong.MaxValue);
        var (left, right) = (Math.Max(0, firstWord), Math.Min(bits.Stride, firstWord + WindowWords));
        for (var y = 0; y < rows; y++)
        {
            var into = source.AsSpan((y * Stride) + Pad, WindowWords);
            into.Clear();
            if (firstRow + y >= 0 && firstRow + y < bits.Height)
            {
                var part = into[(left - firstWord)..(right - firstWord)];
                bits.Row(firstRow + y)[left..right].CopyTo(part);
                if (gap)
                    PackedBitmap.Invert(part, right == bits.Stride ? bits.LastMask : ulong.MaxValue);
            }

            Or(any, into, 0, WindowWords);
            And(all, into, 0, WindowWords);
        }
    }

    /// <summary>
    /// Narrows the work to the columns of words where image and gap meet, with two margins: within one margin of them something can be
    /// removed, and what is outside the work can spoil no more than one margin inside it. False where nothing can be removed.
    /// </summary>
    private bool ChooseColumns(int margin)
    {
        var (first, last) = (WindowWords, -1);
        for (var i = 0; i < WindowWords; i++)
        {
            var uniform = any[i] == 0 || all[i] == ulong.MaxValue;
            if (uniform && (i == 0 || any[i] == any[i - 1]))
                continue;
            first = Math.Min(first, uniform ? i - 1 : i);
            last = i;
        }

        from = Math.Max(0, first - (2 * margin)) & ~(Pad - 1);
        to = Math.Min(WindowWords, (last + 1 + (2 * margin) + Pad - 1) & ~(Pad - 1));
        return last >= 0;
    }

    /// <summary>Bit x of fits row y: the disc's box with its corner at (x, y) of the window lies in the source.</summary>
    private void Erode(DigitalDisc disc, int rows)
    {
        fits.AsSpan(0, rows * Stride).Fill(ulong.MaxValue);
        var lastRow = rows + disc.Diameter - 1;
        for (var y = 0; y < lastRow; y++)
        {
            var row = source.AsSpan((y * Stride) + Pad + from, to - from);
            if (row.IndexOfAnyExcept(ulong.MaxValue) < 0)
                continue;
            if (row.IndexOfAnyExcept(0UL) < 0)
            {
                for (var j = Math.Max(0, y - rows + 1); j < disc.Diameter && j <= y; j++)
                    fits.AsSpan((y - j) * Stride, Stride).Clear();
                continue;
            }

            BuildRuns(source.AsSpan(y * Stride, Stride), disc.Diameter, fitting: true);
            foreach (var group in disc.Widths)
            {
                var k = BitOperations.Log2((uint)group.Length);
                var run = runs.AsSpan(k * Stride, Stride);
                work.AsSpan().Fill(ulong.MaxValue);
                AndShiftLeft(run, group.Inset, work);
                AndShiftLeft(run, group.Inset + group.Length - (1 << k), work);
                foreach (var j in group.Rows)
                {
                    if (y - j >= 0 && y - j < rows)
                        And(fits.AsSpan((y - j) * Stride, Stride), work, Pad + from, Pad + to);
                }
            }
        }
    }

    private void Dilate(DigitalDisc disc, int rows, int above)
    {
        opened.AsSpan(0, rows * Stride).Clear();
        for (var y = 0; y < rows + above; y++)
        {
            var row = fits.AsSpan(y * Stride, Stride);
            row[..(Pad + from)].Clear();
            row[(Pad + to)..].Clear();
            if (row.IndexOfAnyExcept(0UL) < 0)
                continue;
            BuildRuns(row, disc.Diameter, fitting: false);
            foreach (var group in disc.Widths)
            {
                var k = BitOperations.Log2((uint)group.Length);
                var run = runs.AsSpan(k * Stride, Stride);
                work.AsSpan().Clear();
                OrShiftRight(run, group.Inset, work);
                OrShiftRight(run, group.Inset + group.Length - (1 << k), work);
                foreach (var j in group.Rows)
                {
                    // The box row j of a disc at row y lies at row y + j of the window, which is row y + j - above of the tile.
                    var at = y + j - above;
                    if (at >= 0 && at < rows)
                        Or(opened.AsSpan(at * Stride, Stride), work, Pad + from, Pad + to);
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
            below.CopyTo(level);
            if (fitting)
                AndShiftLeft(below, 1 << (k - 1), level);
            else
                OrShiftRight(below, 1 << (k - 1), level);
        }
    }

    private static void And(Span<ulong> into, ReadOnlySpan<ulong> other, int first, int end)
    {
        var a = MemoryMarshal.Cast<ulong, Vector<ulong>>(into[first..end]);
        var b = MemoryMarshal.Cast<ulong, Vector<ulong>>(other[first..end]);
        for (var i = 0; i < a.Length; i++)
            a[i] &= b[i];
    }

    private static void Or(Span<ulong> into, ReadOnlySpan<ulong> other, int first, int end)
    {
        var a = MemoryMarshal.Cast<ulong, Vector<ulong>>(into[first..end]);
        var b = MemoryMarshal.Cast<ulong, Vector<ulong>>(other[first..end]);
        for (var i = 0; i < a.Length; i++)
            a[i] |= b[i];
    }

    private void AndShiftLeft(ReadOnlySpan<ulong> row, int pixels, Span<ulong> into)
    {
        var (words, bits) = (pixels >> 6, pixels & 63);
        ref var near = ref MemoryMarshal.GetReference(row[words..]);
        ref var at = ref MemoryMarshal.GetReference(into);
        for (var i = Pad + from; i < Pad + to; i += Vector<ulong>.Count)
        {
            var moved = Vector.LoadUnsafe(ref near, (nuint)i);
            if (bits != 0)
                moved = (moved << bits) | (Vector.LoadUnsafe(ref near, (nuint)(i + 1)) >>> (64 - bits));
            (Vector.LoadUnsafe(ref at, (nuint)i) & moved).StoreUnsafe(ref at, (nuint)i);
        }
    }

    private void OrShiftRight(ReadOnlySpan<ulong> row, int pixels, Span<ulong> into)
    {
        var (words, bits) = (pixels >> 6, pixels & 63);
        ref var start = ref MemoryMarshal.GetReference(row);
        ref var at = ref MemoryMarshal.GetReference(into);
        for (var i = Pad + from; i < Pad + to; i += Vector<ulong>.Count)
        {
            var moved = Vector.LoadUnsafe(ref start, (nuint)(i - words));
            if (bits != 0)
                moved = (moved >>> bits) | (Vector.LoadUnsafe(ref start, (nuint)(i - words - 1)) << (64 - bits));
            (Vector.LoadUnsafe(ref at, (nuint)i) | moved).StoreUnsafe(ref at, (nuint)i);
        }
    }
}
