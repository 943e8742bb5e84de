using System.Numerics;
using System.Runtime.CompilerServices;
using Silkwright.Film.Readers;

namespace Silkwright.Film.Measuring;

/// <summary>A bitmap as large as a film, in cells of one word by <see cref="CellRows"/> rows; a cell that is all gap or all image takes no memory.</summary>
/// <remarks>
/// The leftmost pixel is in a word's highest bit; bits past the width are 0, so a cell at the film's right or lower edge is stored though it be all image.
/// Several threads may write at once, each its own words.
/// </remarks>
internal sealed class FilmBitmap
{
    /// <summary>Rows of a cell.</summary>
    public const int CellRows = 64;

    /// <summary>What stands in <see cref="places"/> for a cell whose pixels are all clear, and for one whose are all set.</summary>
    private const int Blank = 0;
    private const int Full = 1;

    private const int FirstStored = 2;

    /// <summary>Cells that are allocated together: 256 KiB.</summary>
    private const int SlabCells = 1 << SlabBits;
    private const int SlabBits = 9;

    /// <summary>For each cell: blank, full, or where its words are.</summary>
    private readonly int[] places;
    private readonly ulong[]?[] slabs;
    private readonly Stack<int> givenUp = new();
    private readonly Lock making = new();
    private int stored = FirstStored;

    /// <summary>A blank one.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A side is not positive, or the bitmap is larger than a film may be.</exception>
    public FilmBitmap(int width, int height)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(width);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(height);
        ArgumentOutOfRangeException.ThrowIfGreaterThan((long)width * height, FilmLimits.MostPixels, nameof(height));
        (Width, Height, Stride) = (width, height, (width + 63) >> 6);
        LastMask = (width & 63) == 0 ? ulong.MaxValue : ~(ulong.MaxValue >> (width & 63));
        CellsDown = (height + CellRows - 1) / CellRows;
        places = new int[Stride * CellsDown];
        slabs = new ulong[]?[((places.Length + FirstStored) >> SlabBits) + 1];
    }

    /// <summary>[px]</summary>
    public int Width { get; }

    /// <summary>[px]</summary>
    public int Height { get; }

    /// <summary>Words in a row, and cells across.</summary>
    public int Stride { get; }

    /// <summary>Cells one above the other.</summary>
    public int CellsDown { get; }

    /// <summary>The bits of a row's last word that are pixels.</summary>
    public ulong LastMask { get; }

    public bool this[int x, int y] => (Word(y, x >> 6) & (1UL << (63 - (x & 63)))) != 0;

    /// <summary>The same pixels.</summary>
    public static FilmBitmap Of(PackedBitmap bits)
    {
        var film = new FilmBitmap(bits.Width, bits.Height);
        var writer = new CellRowWriter(film);
        for (var y = 0; y < bits.Height; y++)
            bits.Row(y).CopyTo(writer.Row(y));
        writer.Flush();
        return film;
    }

    /// <summary>A word to read.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public ulong Word(int y, int word)
    {
        var place = places[(y / CellRows * Stride) + word];
        return place >= FirstStored ? slabs[place >> SlabBits]![((place & (SlabCells - 1)) * CellRows) + (y % CellRows)] : place == Full ? ulong.MaxValue : 0;
    }

    /// <summary>A word to write.</summary>
    public ref ulong Writable(int y, int word) => ref Stored(ref places[(y / CellRows * Stride) + word])[y % CellRows];

    /// <summary>The words of a cell from the top down, or none where all are alike: then <paramref name="alike"/> says what they are.</summary>
    public ReadOnlySpan<ulong> Cell(int word, int cellRow, out ulong alike)
    {
        var place = places[(cellRow * Stride) + word];
        alike = place == Full ? ulong.MaxValue : 0;
        return place >= FirstStored ? Words(place) : [];
    }

    /// <summary>Pixels of the cells that take memory. [px]</summary>
    public long StoredPixels => 64L * CellRows * (Volatile.Read(ref stored) - FirstStored);

    /// <summary>Whether a whole row of cells is blank.</summary>
    public bool IsBlank(int cellRow) => !places.AsSpan(cellRow * Stride, Stride).ContainsAnyExcept(Blank);

    /// <summary>Writes where a row changes: starts and ends of its runs in turn.</summary>
    /// <param name="y">The row.</param>
    /// <param name="edges">Room for <see cref="Width"/> + 2 numbers.</param>
    /// <returns>How many numbers were written; even.</returns>
    public int Edges(int y, Span<int> edges)
    {
        var (count, carry) = (0, 0UL);
        var cells = places.AsSpan(y / CellRows * Stride, Stride);
        for (var word = 0; word < cells.Length; word++)
        {
            if (carry == 0)
            {
                var blank = cells[word..].IndexOfAnyExcept(Blank);
                if (blank < 0)
                    break;
                word += blank;
            }

            count = BitRow.Edges(Word(y, word), ref carry, word, edges, count);
        }

        if ((count & 1) == 1)
            edges[count++] = Width;
        return count;
    }

    /// <summary>Set pixels.</summary>
    public long Count()
    {
        var count = 0L;
        foreach (var place in places)
            count += place >= FirstStored ? BitRow.Count(Words(place)) : place == Full ? 64 * CellRows : 0;
        return count;
    }

    /// <summary>Set pixels of a row from <paramref name="from"/> up to but not <paramref name="to"/>; both inside the row.</summary>
    public int Count(int y, int from, int to)
    {
        var count = 0;
        for (var word = from >> 6; word << 6 < to; word++)
            count += BitOperations.PopCount(Word(y, word) & BitRow.Between(word, from, to));
        return count;
    }

    /// <summary>Copies words of a row.</summary>
    public void Read(int y, int firstWord, Span<ulong> into)
    {
        for (var i = 0; i < into.Length; i++)
            into[i] = Word(y, firstWord + i);
    }

    /// <summary>Sets pixels of a row from <paramref name="from"/> up to but not <paramref name="to"/>.</summary>
    public void Set(int y, int from, int to)
    {
        for (var word = from >> 6; word << 6 < to; word++)
        {
            var bits = BitRow.Between(word, from, to);
            if ((Word(y, word) & bits) != bits)
                Writable(y, word) |= bits;
        }
    }

    /// <summary>Sets the pixels of columns from <paramref name="left"/> up to but not <paramref name="right"/> in rows from <paramref name="top"/> up to but not <paramref name="bottom"/>.</summary>
    public void Set(int left, int right, int top, int bottom)
    {
        for (var word = left >> 6; word << 6 < right; word++)
        {
            var bits = BitRow.Between(word, left, right);
            for (var cell = top / CellRows; cell * CellRows < bottom; cell++)
            {
                ref var place = ref places[(cell * Stride) + word];
                if (place == Full)
                    continue;
                var (first, end) = (Math.Max(0, top - (cell * CellRows)), Math.Min(CellRows, bottom - (cell * CellRows)));
                foreach (ref var row in Stored(ref place)[first..end])
                    row |= bits;
            }
        }
    }

    /// <summary>Puts in a cell's words, at most <see cref="CellRows"/> from one of its rows on; the rows must have been clear.</summary>
    /// <param name="word">Column of the cell.</param>
    /// <param name="y">The first row.</param>
    /// <param name="rows">Rows of whole words, <paramref name="stride"/> apart, this cell's first.</param>
    /// <param name="stride">Words from one row to the next.</param>
    /// <param name="count">Rows.</param>
    public void Put(int word, int y, ReadOnlySpan<ulong> rows, int stride, int count)
    {
        var into = Stored(ref places[(y / CellRows * Stride) + word])[(y % CellRows)..];
        for (var i = 0; i < count; i++)
            into[i] = rows[i * stride];
    }

    /// <summary>Makes a cell all image; it must have been blank and lie wholly on the film.</summary>
    public void Fill(int word, int cellRow) => places[(cellRow * Stride) + word] = Full;

    /// <summary>Turns pixels round where another bitmap of the size is set.</summary>
    public void Turn(FilmBitmap where)
    {
        for (var i = 0; i < places.Length; i++)
        {
            if (where.places[i] == Blank)
                continue;
            var into = Stored(ref places[i]);
            for (var row = 0; row < CellRows; row++)
                into[row] ^= where.places[i] == Full ? ulong.MaxValue : where.Words(where.places[i])[row];
        }
    }

    /// <summary>Gives up the memory of cells that have become all clear or all set. No other thread may write meanwhile.</summary>
    public void Compact()
    {
        for (var i = 0; i < places.Length; i++)
        {
            var place = places[i];
            if (place < FirstStored)
                continue;
            var words = Words(place);
            var alike = words[0];
            if (alike is not (0 or ulong.MaxValue) || words.ContainsAnyExcept(alike))
                continue;
            places[i] = alike == 0 ? Blank : Full;
            givenUp.Push(place);
        }
    }

    /// <summary>Blanks every pixel; the memory stays, to be written again. No other thread may write meanwhile.</summary>
    public void Clear()
    {
        places.AsSpan().Clear();
        givenUp.Clear();
        stored = FirstStored;
    }

    private Span<ulong> Stored(ref int place)
    {
        var there = Volatile.Read(ref place);
        return Words(there >= FirstStored ? there : Made(ref place));
    }

    private int Made(ref int place)
    {
        lock (making)
        {
            // Another thread may have made it while this one waited.
            if (place >= FirstStored)
                return place;
            if (!givenUp.TryPop(out var made))
            {
                made = stored++;
                slabs[made >> SlabBits] ??= GC.AllocateUninitializedArray<ulong>(SlabCells * CellRows);
            }

            Words(made).Fill(place == Full ? ulong.MaxValue : 0);
            Volatile.Write(ref place, made);
            return made;
        }
    }

    private Span<ulong> Words(int place) => slabs[place >> SlabBits].AsSpan((place & (SlabCells - 1)) * CellRows, CellRows);
}
