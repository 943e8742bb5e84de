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
    /// <summary>Rows of a tile.</summary>
    public const int TileRows = 256;

    /// <summary>Words across a tile with its margins.</summary>
    private const int WindowWords = 32;

    /// <summary>Zero words after each row, so that shifts may read past its end: a disc's width and a vector more.</summary>
    private const int Pad = 8;

    private const int Stride = WindowWords + (2 * Pad);
    private const int MostRows = TileRows + (2 * DigitalDisc.MostDiameter);

    private readonly ulong[] source = new ulong[Stride * MostRows];
    private readonly ulong[] fits = new ulong[Stride * MostRows];
    private readonly ulong[] opened = new ulong[Stride * TileRows];
    private readonly ulong[] runs = new ulong[Stride * 9];
    private readonly ulong[] work = new ulong[Stride];

    /// <summary>Words of film a tile covers for a disc.</summary>
    public static int TileWords(int diameter) => WindowWords - (2 * Margin(diameter));

    /// <summary>Works out one tile.</summary>
    /// <param name="bits">The film.</param>
    /// <param name="gap">Open the gap instead of the image.</param>
    /// <param name="disc">The disc.</param>
    /// <param name="firstWord">Left edge of the tile. [word]</param>
    /// <param name="firstRow">Top edge of the tile.</param>
    /// <param name="row">Given each row's number and what was removed from it, in <see cref="TileWords"/> words or fewer at the right edge.</param>
    /// <returns>Whether anything was looked at: a tile without any of both kinds has no residue.</returns>
    public bool Residue(PackedBitmap bits, bool gap, DigitalDisc disc, int firstWord, int firstRow, RowSink row)
    {
        var margin = Margin(disc.Diameter);
        var rows = Math.Min(TileRows, bits.Height - firstRow);
        var above = disc.Diameter - 1;
        if (!Load(bits, gap, firstWord - margin, firstRow - above, rows + (2 * above)))
            return false;
        Erode(disc, rows + above);
        Dilate(disc, rows, above);
        var words = Math.Min(TileWords(disc.Diameter), bits.Stride - firstWord);
        for (var y = 0; y < rows; y++)
        {
            var kept = opened.AsSpan((y * Stride) + margin, words);
            var all = source.AsSpan(((y + above) * Stride) + margin, words);
            for (var i = 0; i < words; i++)
                kept[i] = all[i] & ~kept[i];
            row(firstRow + y, kept);
        }

        return true;
    }

    private static int Margin(int diameter) => (diameter + 62) >> 6;

    /// <summary>Copies the tile and its margins; says whether they hold both image and gap.</summary>
    private bool Load(PackedBitmap bits, bool gap, int firstWord, int firstRow, int rows)
    {
        var (any, all) = (0UL, ulong.MaxValue);
        var (from, to) = (Math.Max(0, firstWord), Math.Min(bits.Stride, firstWord + WindowWords));
        for (var y = 0; y < rows; y++)
        {
            var into = source.AsSpan(y * Stride, Stride);
            into.Clear();
            if (firstRow + y < 0 || firstRow + y >= bits.Height)
            {
                all = 0;
                continue;
            }

            var part = into[(from - firstWord)..(to - firstWord)];
            bits.Row(firstRow + y)[from..to].CopyTo(part);
            if (gap)
                PackedBitmap.Invert(part, to == bits.Stride ? bits.LastMask : ulong.MaxValue);
            foreach (var word in part)
            {
                any |= word;
                all &= word;
            }
        }

        var whole = from == firstWord && to == firstWord + WindowWords;
        return any != 0 && !(whole && all == ulong.MaxValue);
    }

    /// <summary>fits[y] bit x: the disc's box with its corner at (x, y) of the window lies in the source.</summary>
    private void Erode(DigitalDisc disc, int rows)
    {
        fits.AsSpan(0, rows * Stride).Fill(ulong.MaxValue);
        var lastRow = rows + disc.Diameter - 1;
        for (var y = 0; y < lastRow; y++)
        {
            BuildRuns(source.AsSpan(y * Stride, Stride), disc.Diameter, leftward: true);
            foreach (var group in disc.Widths)
            {
                var k = BitOperations.Log2((uint)group.Length);
                var run = runs.AsSpan(k * Stride, Stride);
                ShiftLeft(run, group.Inset, work);
                AndShiftLeft(run, group.Inset + group.Length - (1 << k), work);
                foreach (var j in group.Rows)
                {
                    if (y - j >= 0 && y - j < rows)
                        And(fits.AsSpan((y - j) * Stride, WindowWords), work);
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
            row[WindowWords..].Clear();
            if (row.IndexOfAnyExcept(0UL) < 0)
                continue;
            BuildRuns(row, disc.Diameter, leftward: false);
            foreach (var group in disc.Widths)
            {
                var k = BitOperations.Log2((uint)group.Length);
                var run = runs.AsSpan(k * Stride, Stride);
                ShiftRight(run, group.Inset, work);
                OrShiftRight(run, group.Inset + group.Length - (1 << k), work);
                foreach (var j in group.Rows)
                {
                    // The box row j of a disc at row y lies at row y + j of the window, which is row y + j - above of the tile.
                    var at = y + j - above;
                    if (at >= 0 && at < rows)
                        Or(opened.AsSpan(at * Stride, WindowWords), work);
                }
            }
        }
    }

    /// <summary>
    /// Level k: leftward, bit x says that x .. x + 2^k - 1 are all set; rightward, that any of x - 2^k + 1 .. x is.
    /// </summary>
    private void BuildRuns(ReadOnlySpan<ulong> row, int most, bool leftward)
    {
        row.CopyTo(runs);
        for (var k = 1; 1 << k <= most; k++)
        {
            var below = runs.AsSpan((k - 1) * Stride, Stride);
            var level = runs.AsSpan(k * Stride, Stride);
            below.CopyTo(level);
            if (leftward)
                AndShiftLeft(below, 1 << (k - 1), level);
            else
                OrShiftRight(below, 1 << (k - 1), level);
        }
    }

    private static void And(Span<ulong> into, ReadOnlySpan<ulong> from)
    {
        var a = MemoryMarshal.Cast<ulong, Vector<ulong>>(into);
        var b = MemoryMarshal.Cast<ulong, Vector<ulong>>(from);
        for (var i = 0; i < a.Length; i++)
            a[i] &= b[i];
    }

    private static void Or(Span<ulong> into, ReadOnlySpan<ulong> from)
    {
        var a = MemoryMarshal.Cast<ulong, Vector<ulong>>(into);
        var b = MemoryMarshal.Cast<ulong, Vector<ulong>>(from);
        for (var i = 0; i < a.Length; i++)
            a[i] |= b[i];
    }

    private static void ShiftLeft(ReadOnlySpan<ulong> from, int pixels, Span<ulong> into)
    {
        into[..WindowWords].Fill(ulong.MaxValue);
        AndShiftLeft(from, pixels, into);
    }

    private static void ShiftRight(ReadOnlySpan<ulong> from, int pixels, Span<ulong> into)
    {
        into[..WindowWords].Clear();
        OrShiftRight(from, pixels, into);
    }

    private static void AndShiftLeft(ReadOnlySpan<ulong> from, int pixels, Span<ulong> into)
    {
        var (words, bits) = (pixels >> 6, pixels & 63);
        var near = from[words..];
        if (bits == 0)
        {
            for (var i = 0; i < WindowWords; i += Vector<ulong>.Count)
                (new Vector<ulong>(into[i..]) & new Vector<ulong>(near[i..])).CopyTo(into[i..]);
            return;
        }

        var next = from[(words + 1)..];
        for (var i = 0; i < WindowWords; i += Vector<ulong>.Count)
        {
            var moved = (new Vector<ulong>(near[i..]) << bits) | (new Vector<ulong>(next[i..]) >>> (64 - bits));
            (new Vector<ulong>(into[i..]) & moved).CopyTo(into[i..]);
        }
    }

    /// <summary>Bits that come from left of the window are 0.</summary>
    private static void OrShiftRight(ReadOnlySpan<ulong> from, int pixels, Span<ulong> into)
    {
        var (words, bits) = (pixels >> 6, pixels & 63);
        for (var i = words; i < WindowWords; i++)
        {
            var moved = from[i - words] >> bits;
            if (bits > 0 && i > words)
                moved |= from[i - words - 1] << (64 - bits);
            into[i] |= moved;
        }
    }
}
