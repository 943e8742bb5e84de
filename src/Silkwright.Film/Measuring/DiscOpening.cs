using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Silkwright.Film.Readers;

namespace Silkwright.Film.Measuring;

/// <summary>What opening by a digital disc removes, worked out in tiles of packed rows.</summary>
/// <remarks>
/// The disc is taken row by row. Where its run of n pixels fits into a row is found by doubling (runs of 1, 2, 4 ... and one overlap);
/// the erosion is the AND of those rows, the dilation the OR of the same runs put back. A large disc is first tried by its longest row and
/// column alone, and only where both fit is anything more worked out. Outside the film there is neither image nor gap: a disc lies wholly
/// on the film. One instance serves one thread.
/// </remarks>
internal sealed class DiscOpening
{
    /// <summary>Least diameter that is tried by its longest row and column first. [px]</summary>
    private const int LeastTried = 12;

    /// <summary>Zero words before and after each row, so that shifts may read past its ends: a disc's width and a vector more.</summary>
    private const int Pad = 8;

    /// <summary>Words that are worked on together: the longest vector.</summary>
    private const int Together = 8;

    /// <summary>Rows of the largest tile; those of smaller ones divide it.</summary>
    public const int MostTileRows = 256;

    private const int MostRows = MostTileRows + (2 * DigitalDisc.MostDiameter);
    private const int MostWindow = 128;

    private readonly ulong[] source = new ulong[MostWords()];
    private readonly ulong[] fits = new ulong[MostWords()];
    private readonly ulong[] opened = new ulong[MostWords()];
    private readonly ulong[] runs = new ulong[(MostWindow + (2 * Pad)) * 9];
    private readonly ulong[] work = new ulong[MostWindow + (2 * Pad)];
    private readonly ulong[] any = new ulong[MostWindow];
    private readonly ulong[] all = new ulong[MostWindow];
    private readonly ulong[] removed = new ulong[MostWindow];

    /// <summary>Rows at or above which a disc may still fit: for each row of the tile and its margins, how many.</summary>
    private readonly int[] fitting = new int[MostRows + 1];

    /// <summary>The words worked on, a whole number of vectors.</summary>
    private int from;
    private int to;

    /// <summary>Words of the tile and its margins.</summary>
    private int window;

    /// <summary>Words from one row to the next.</summary>
    private int stride;

    /// <summary>Words of film a tile covers for a disc.</summary>
    public static int TileWords(int diameter) => WindowWords(diameter) - (2 * Margin(diameter));

    /// <summary>Rows of film a tile covers: more for larger discs, whose margins are worked on twice.</summary>
    public static int TileRows(int diameter) => diameter <= 20 ? 64 : diameter <= 64 ? 128 : MostTileRows;

    /// <summary>Tiles that hold all pixels of a box: columns from <paramref name="left"/> up to but not <paramref name="right"/>, rows alike.</summary>
    public static IEnumerable<OpeningTile> Tiles(int diameter, int left, int right, int top, int bottom)
    {
        var (words, rows, end) = (TileWords(diameter), TileRows(diameter), ((right - 1) >> 6) + 1);
        for (var row = top; row < bottom; row += rows)
        {
            for (var word = left >> 6; word < end; word += words)
                yield return new OpeningTile(word, Math.Min(words, end - word), row, Math.Min(rows, bottom - row));
        }
    }

    /// <summary>Works out one tile.</summary>
    /// <param name="bits">The film.</param>
    /// <param name="gap">Open the gap instead of the image.</param>
    /// <param name="disc">The disc.</param>
    /// <param name="tile">On the film, and no larger than <see cref="TileWords"/> by <see cref="TileRows"/>.</param>
    /// <param name="row">Given each row's number and what was removed from it, in the tile's words.</param>
    /// <remarks>A tile that is all image or all gap, margins included, has nothing removed and gives no rows.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Residue(FilmBitmap bits, bool gap, DigitalDisc disc, OpeningTile tile, RowSink row)
    {
        var margin = Margin(disc.Diameter);
        var above = disc.Diameter - 1;
        window = tile.Words + (2 * margin);
        stride = WindowWords(disc.Diameter) + (2 * Pad);
        Load(bits, gap, tile.Word - margin, tile.Row - above, tile.Rows + (2 * above));
        if (!ChooseColumns(margin))
            return;
        var (first, last) = (Math.Max(from, margin), Math.Min(to, margin + tile.Words));
        var rows = tile.Rows + above;
        Span<ulong> into = removed.AsSpan(0, tile.Words);
        into.Clear();
        if (disc.Diameter < LeastTried)
        {
            PackedRows.Fill(fits.AsSpan(0, rows * stride), ulong.MaxValue);
            for (var y = 0; y <= rows; y++)
                fitting[y] = y;
        }
        else if (!Try(disc, rows))
        {
            // No disc fits anywhere: all there is goes.
            for (var y = 0; y < tile.Rows; y++)
            {
                source.AsSpan(((y + above) * stride) + Pad + first, last - first).CopyTo(into[(first - margin)..]);
                row(tile.Row + y, into);
            }

            return;
        }

        Erode(disc, rows);
        Dilate(disc, tile.Rows, above);
        for (var y = 0; y < tile.Rows; y++)
        {
            var (there, left) = ((y + above) * stride, y * stride);
            for (var i = first; i < last; i++)
                into[i - margin] = source[there + Pad + i] & ~opened[left + Pad + i];
            row(tile.Row + y, into);
        }
    }

    private static int Margin(int diameter) => (diameter + 62) >> 6;

    /// <summary>Words across a tile with its margins: many where few rows make the work of one row small.</summary>
    private static int WindowWords(int diameter) => diameter <= 20 ? MostWindow : diameter <= 64 ? 64 : 32;

    private static int MostWords() =>
        new[] { 20, 64, DigitalDisc.MostDiameter }.Max(d => (WindowWords(d) + (2 * Pad)) * (TileRows(d) + (2 * d)));

    /// <summary>Copies the tile and its margins, and notes what each column of words holds.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Load(FilmBitmap bits, bool gap, int firstWord, int firstRow, int rows)
    {
        var (left, right) = (Math.Max(0, -firstWord), Math.Min(window, bits.Stride - firstWord));
        var (top, bottom) = (Math.Max(0, -firstRow), Math.Min(rows, bits.Height - firstRow));
        ClearAround(left, right, top, bottom, rows);
        any.AsSpan(0, window).Clear();
        all.AsSpan(0, window).Fill(top > 0 || bottom < rows ? 0 : ulong.MaxValue);
        all.AsSpan(0, left).Clear();
        all.AsSpan(right, window - right).Clear();
        Span<ulong> room = stackalloc ulong[FilmBitmap.CellRows];
        for (var row = top; row < bottom;)
        {
            var cell = (firstRow + row) / FilmBitmap.CellRows;
            var inCell = (firstRow + row) % FilmBitmap.CellRows;
            var count = Math.Min(FilmBitmap.CellRows - inCell, bottom - row);
            for (var word = left; word < right; word++)
            {
                var turn = gap ? firstWord + word == bits.Stride - 1 ? bits.LastMask : ulong.MaxValue : 0;
                var words = bits.Cell(firstWord + word, cell, room, out var alike);
                ref var into = ref source[(row * stride) + Pad + word];
                if (words.IsEmpty)
                    Put(alike ^ turn, count, ref into, word);
                else
                    Put(words.Slice(inCell, count), turn, ref into, word);
            }

            row += count;
        }
    }

    private void Put(ulong alike, int count, ref ulong into, int word)
    {
        any[word] |= alike;
        all[word] &= alike;
        for (var i = 0; i < count; i++)
            Unsafe.Add(ref into, i * stride) = alike;
    }

    private void Put(ReadOnlySpan<ulong> words, ulong turn, ref ulong into, int word)
    {
        var (some, every) = (0UL, ulong.MaxValue);
        for (var i = 0; i < words.Length; i++)
        {
            var here = words[i] ^ turn;
            some |= here;
            every &= here;
            Unsafe.Add(ref into, i * stride) = here;
        }

        any[word] |= some;
        all[word] &= every;
    }

    /// <summary>Clears what lies off the film and the padding at both ends of each row.</summary>
    private void ClearAround(int left, int right, int top, int bottom, int rows)
    {
        source.AsSpan(0, top * stride).Clear();
        source.AsSpan(bottom * stride, (rows - bottom) * stride).Clear();
        for (var row = top; row < bottom; row++)
        {
            source.AsSpan(row * stride, Pad + left).Clear();
            source.AsSpan((row * stride) + Pad + right, stride - Pad - right).Clear();
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

        from = Math.Max(0, first - (2 * margin)) & ~(Together - 1);
        to = (Math.Min(window, last + 1 + (2 * margin)) + Together - 1) & ~(Together - 1);
        return last >= 0;
    }

    /// <summary>
    /// Sets in fits where the disc's longest row and its longest column both lie in the source, and counts the rows that have any. False
    /// where none has.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool Try(DigitalDisc disc, int rows)
    {
        if (!HoldsSquare(disc.Square, rows + disc.Diameter - 1))
            return false;
        var (words, centre) = (to - from, (disc.Diameter - 1) / 2);

        // The columns: runs of 1, 2, 4 ... rows in opened as in a single row, and one overlap.
        var (held, length) = (rows + disc.Diameter - 1, 1);
        for (var y = 0; y < held; y++)
            source.AsSpan((y * stride) + Pad + from, words + Together).CopyTo(opened.AsSpan((y * stride) + Pad + from));
        for (; 2 * length <= disc.Diameter; length *= 2)
        {
            for (var y = 0; y + length < held; y++)
                PackedRows.And(opened.AsSpan((y * stride) + Pad + from, words + Together), opened.AsSpan(((y + length) * stride) + Pad + from, words + Together));
            held -= length;
        }

        var found = 0;
        for (var y = 0; y < rows; y++)
        {
            var column = opened.AsSpan(y * stride, stride);
            var into = fits.AsSpan((y * stride) + Pad + from, words);
            var reach = disc.Diameter - length;
            if (reach > 0)
                PackedRows.And(column.Slice(Pad + from, words + Together), opened.AsSpan(((y + reach) * stride) + Pad + from, words + Together));
            fitting[y] = found;
            if (PackedRows.IsAll(column.Slice(Pad + from, words + Together), 0))
            {
                into.Clear();
                continue;
            }

            var row = source.AsSpan((y + centre) * stride, stride);
            var levels = BuildRuns(row, disc.Diameter, fitting: true);
            AndShiftedLeft(Level(row, levels), 0, disc.Diameter - (1 << levels), work);
            AndShiftedLeft(column, centre, centre, fits.AsSpan(y * stride, stride));
            PackedRows.And(into, work.AsSpan(Pad + from, words));
            if (!PackedRows.IsAll(into, 0))
                found++;
        }

        fitting[rows] = found;
        return found > 0;
    }

    /// <summary>Whether a square may lie in the source: one of some rows, as far apart as it is high, has a run as long.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool HoldsSquare(int side, int rows)
    {
        for (var y = side - 1; y < rows; y += side)
        {
            var row = source.AsSpan(y * stride, stride);
            if (PackedRows.IsAll(row[(Pad + from)..(Pad + to)], 0))
                continue;
            var levels = BuildRuns(row, side, fitting: true);
            AndShiftedLeft(Level(row, levels), 0, side - (1 << levels), work);
            if (!PackedRows.IsAll(work.AsSpan(Pad + from, to - from), 0))
                return true;
        }

        return false;
    }

    /// <summary>Clears bit x of fits row y unless the disc's box with its corner at (x, y) of the window lies in the source.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Erode(DigitalDisc disc, int rows)
    {
        var lastRow = rows + disc.Diameter - 1;
        var cleared = 0;
        for (var y = 0; y < lastRow; y++)
        {
            var (least, most) = (Math.Max(0, y - disc.Diameter + 1), Math.Min(rows - 1, y));
            if (fitting[most + 1] == fitting[least])
                continue;
            var whole = source.AsSpan(y * stride, stride);
            var row = whole[(Pad + from)..(Pad + to)];
            if (PackedRows.IsAll(row, ulong.MaxValue))
                continue;
            if (PackedRows.IsAll(row, 0))
            {
                // No disc holds an empty row; those a row above it have ruled out need not be cleared again.
                var first = Math.Max(cleared, least);
                cleared = Math.Max(cleared, most + 1);
                if (first < cleared)
                    fits.AsSpan(first * stride, (cleared - first) * stride).Clear();
                continue;
            }

            _ = BuildRuns(whole, disc.Diameter, fitting: true);
            foreach (var group in disc.Widths)
            {
                var k = BitOperations.Log2((uint)group.Length);
                AndShiftedLeft(Level(whole, k), group.Inset, group.Inset + group.Length - (1 << k), work);
                foreach (var j in group.Rows)
                {
                    if (y - j >= 0 && y - j < rows && fitting[y - j + 1] > fitting[y - j])
                        PackedRows.And(fits.AsSpan(((y - j) * stride) + Pad + from, to - from), work.AsSpan(Pad + from, to - from));
                }
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Dilate(DigitalDisc disc, int rows, int above)
    {
        opened.AsSpan(0, rows * stride).Clear();
        for (var y = 0; y < rows + above; y++)
        {
            var row = fits.AsSpan(y * stride, stride);
            if (fitting[y + 1] == fitting[y] || PackedRows.IsAll(row[(Pad + from)..(Pad + to)], 0))
                continue;
            row[(Pad + from - Together)..(Pad + from)].Clear();
            _ = BuildRuns(row, disc.Diameter, fitting: false);
            foreach (var group in disc.Widths)
            {
                var k = BitOperations.Log2((uint)group.Length);
                OrShiftedRight(Level(row, k), group.Inset, group.Inset + group.Length - (1 << k), work);
                foreach (var j in group.Rows)
                {
                    // The box row j of a disc at row y lies at row y + j of the window, which is row y + j - above of the tile.
                    var at = y + j - above;
                    if (at >= 0 && at < rows)
                        PackedRows.Or(opened.AsSpan((at * stride) + Pad + from, to - from), work.AsSpan(Pad + from, to - from));
                }
            }
        }
    }

    /// <summary>
    /// Level k, fitting: bit x says that x .. x + 2^k - 1 are all set; else, that any of x - 2^k + 1 .. x is. Level 0 is the row itself.
    /// </summary>
    /// <returns>The highest level.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private int BuildRuns(ReadOnlySpan<ulong> row, int most, bool fitting)
    {
        var below = row;
        var k = 1;
        for (; 1 << k <= most; k++)
        {
            var level = runs.AsSpan(k * stride, stride);

            // What lies beside the work is only read; there the level below is near enough, and what it spoils is margin.
            if (fitting)
            {
                below.Slice(Pad + to, Together).CopyTo(level[(Pad + to)..]);
                AndShiftedLeft(below, 0, 1 << (k - 1), level);
            }
            else
            {
                below.Slice(Pad + from - Together, Together).CopyTo(level[(Pad + from - Together)..]);
                OrShiftedRight(below, 0, 1 << (k - 1), level);
            }

            below = level;
        }

        return k - 1;
    }

    private ReadOnlySpan<ulong> Level(ReadOnlySpan<ulong> row, int k) => k == 0 ? row : runs.AsSpan(k * stride, stride);

    /// <summary>into = row moved left by one number of pixels AND row moved by another.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void AndShiftedLeft(ReadOnlySpan<ulong> row, int pixels, int others, Span<ulong> into)
    {
        ref var one = ref MemoryMarshal.GetReference(row[(pixels >> 6)..]);
        ref var two = ref MemoryMarshal.GetReference(row[(others >> 6)..]);
        ref var at = ref MemoryMarshal.GetReference(into);
        (pixels, others) = (pixels & 63, others & 63);
        if (Vector512.IsHardwareAccelerated)
        {
            for (var i = Pad + from; i < Pad + to; i += Vector512<ulong>.Count)
                (MovedLeft512(ref one, i, pixels) & MovedLeft512(ref two, i, others)).StoreUnsafe(ref at, (nuint)i);
            return;
        }

        for (var i = Pad + from; i < Pad + to; i += Vector<ulong>.Count)
            (MovedLeft(ref one, i, pixels) & MovedLeft(ref two, i, others)).StoreUnsafe(ref at, (nuint)i);
    }

    /// <summary>into = row moved right by one number of pixels OR row moved by another.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void OrShiftedRight(ReadOnlySpan<ulong> row, int pixels, int others, Span<ulong> into)
    {
        ref var start = ref MemoryMarshal.GetReference(row);
        ref var at = ref MemoryMarshal.GetReference(into);
        var (oneWords, twoWords) = (pixels >> 6, others >> 6);
        (pixels, others) = (pixels & 63, others & 63);
        if (Vector512.IsHardwareAccelerated)
        {
            for (var i = Pad + from; i < Pad + to; i += Vector512<ulong>.Count)
                (MovedRight512(ref start, i - oneWords, pixels) | MovedRight512(ref start, i - twoWords, others)).StoreUnsafe(ref at, (nuint)i);
            return;
        }

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

    // A shift by 64 would be one by 0: it is made in two steps, so that no place needs to be asked about.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<ulong> MovedLeft512(ref ulong row, int i, int bits) =>
        (Vector512.LoadUnsafe(ref row, (nuint)i) << bits) | (Vector512.LoadUnsafe(ref row, (nuint)(i + 1)) >>> 1 >>> (63 - bits));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<ulong> MovedRight512(ref ulong row, int i, int bits) =>
        (Vector512.LoadUnsafe(ref row, (nuint)i) >>> bits) | (Vector512.LoadUnsafe(ref row, (nuint)(i - 1)) << 1 << (63 - bits));
}
