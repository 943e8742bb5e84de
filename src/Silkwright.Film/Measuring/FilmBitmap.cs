using System.Numerics;
using System.Runtime.CompilerServices;
using Silkwright.Film.Readers;

namespace Silkwright.Film.Measuring;

/// <summary>A bitmap as large as a film, in cells of one word by <see cref="CellRows"/> rows; a cell that is all gap or all image takes no memory.</summary>
/// <remarks>
/// The leftmost pixel is in a word's highest bit; bits past the width are 0, so a cell at the film's right or lower edge is kept though it be all image. What is put in whole is kept as
/// where it changes (<see cref="CodedCells"/>), what is written a word at a time plainly. Several threads may write at once, each its own words.
/// </remarks>
internal sealed class FilmBitmap
{
    /// <summary>Rows of a cell.</summary>
    public const int CellRows = 64;

    /// <summary>What stands in <see cref="places"/> for a cell whose pixels are all clear, and for one whose are all set.</summary>
    private const int Blank = 0;
    private const int Full = 1;

    private const int FirstPlain = 2;

    /// <summary>For each cell: blank, full, from <see cref="FirstPlain"/> on the number of a plain cell, below 0 the complement of a coded one's place.</summary>
    private readonly int[] places;
    private readonly PlainCells plain;
    private readonly CodedCells coded;
    private readonly Lock making = new();

    /// <summary>A blank one.</summary>
    /// <param name="width">[px]</param>
    /// <param name="height">[px]</param>
    /// <param name="scratch">Takes the cells put in whole that are not kept in memory; none: all are. It must outlive the bitmap.</param>
    /// <exception cref="ArgumentOutOfRangeException">A side is not positive, or the bitmap is larger than a film may be.</exception>
    public FilmBitmap(int width, int height, ScratchFile? scratch = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(width);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(height);
        ArgumentOutOfRangeException.ThrowIfGreaterThan((long)width * height, FilmLimits.MostPixels, nameof(height));
        (Width, Height, Stride) = (width, height, (width + 63) >> 6);
        LastMask = (width & 63) == 0 ? ulong.MaxValue : ~(ulong.MaxValue >> (width & 63));
        CellsDown = (height + CellRows - 1) / CellRows;
        places = new int[Stride * CellsDown];
        plain = new PlainCells(places.Length);
        coded = new CodedCells(places.Length, scratch);
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
        return place >= FirstPlain ? plain[place - FirstPlain][y % CellRows] : place < 0 ? coded.Row(~place, y % CellRows) : place == Full ? ulong.MaxValue : 0;
    }

    /// <summary>A word to write.</summary>
    public ref ulong Writable(int y, int word) => ref Plain(ref places[(y / CellRows * Stride) + word])[y % CellRows];

    /// <summary>The words of a cell from the top down, or none where all are alike: then <paramref name="alike"/> says what they are.</summary>
    /// <param name="word">Column of the cell.</param>
    /// <param name="cellRow">Row of the cell.</param>
    /// <param name="room">Room for <see cref="CellRows"/> words.</param>
    /// <param name="alike">All clear or all set.</param>
    public ReadOnlySpan<ulong> Cell(int word, int cellRow, Span<ulong> room, out ulong alike)
    {
        var place = places[(cellRow * Stride) + word];
        alike = place == Full ? ulong.MaxValue : 0;
        return Words(place, room);
    }

    /// <summary>Memory, and scratch, of the cells that are not all alike. [byte]</summary>
    public long KeptBytes => (sizeof(ulong) * CellRows * (long)plain.Taken) + coded.Bytes;

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
        Span<ulong> room = stackalloc ulong[CellRows];
        foreach (var place in places)
            count += place == Full ? 64 * CellRows : BitRow.Count(Words(place, room));
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

    /// <summary>Copies a row of cells, row by row: <see cref="CellRows"/> rows of <see cref="Stride"/> words.</summary>
    public void ReadCells(int cellRow, Span<ulong> into)
    {
        Span<ulong> room = stackalloc ulong[CellRows];
        for (var word = 0; word < Stride; word++)
        {
            var words = Cell(word, cellRow, room, out var alike);
            for (var row = 0; row < CellRows; row++)
                into[(row * Stride) + word] = words.IsEmpty ? alike : words[row];
        }
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
                foreach (ref var row in Plain(ref place)[first..end])
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
        ref var place = ref places[(y / CellRows * Stride) + word];
        if (place == Blank && (count == CellRows || y + count == Height) && y % CellRows == 0)
        {
            Span<ulong> whole = stackalloc ulong[CellRows];
            whole[count..].Clear();
            Copy(rows, whole);
            Volatile.Write(ref place, ~coded.Add(whole));
            return;
        }

        Copy(rows, Plain(ref place)[(y % CellRows)..]);

        void Copy(ReadOnlySpan<ulong> from, Span<ulong> into)
        {
            for (var i = 0; i < count; i++)
                into[i] = from[i * stride];
        }
    }

    /// <summary>Makes a cell all image; it must have been blank and lie wholly on the film.</summary>
    public void Fill(int word, int cellRow) => places[(cellRow * Stride) + word] = Full;

    /// <summary>Turns pixels round where another bitmap of the size is set. No other thread may write meanwhile.</summary>
    public void Turn(FilmBitmap where)
    {
        Span<ulong> turned = stackalloc ulong[CellRows];
        Span<ulong> room = stackalloc ulong[CellRows];
        for (var i = 0; i < places.Length; i++)
        {
            if (where.places[i] == Blank)
                continue;
            CopyCell(places[i], turned);
            where.CopyCell(where.places[i], room);
            for (var row = 0; row < CellRows; row++)
                turned[row] ^= room[row];
            Keep(ref places[i], turned);
        }
    }

    /// <summary>Makes the memory of plain cells that have been written as small as it can be. No other thread may write meanwhile.</summary>
    public void Compact()
    {
        foreach (ref var place in places.AsSpan())
        {
            if (place >= FirstPlain)
                Keep(ref place, plain[place - FirstPlain]);
        }
    }

    /// <summary>Blanks every pixel; the memory stays, to be written again. No other thread may write meanwhile.</summary>
    public void Clear()
    {
        places.AsSpan().Clear();
        plain.Clear();
        coded.Clear();
    }

    /// <summary>The words of a cell that are not all alike.</summary>
    private ReadOnlySpan<ulong> Words(int place, Span<ulong> room)
    {
        if (place >= FirstPlain)
            return plain[place - FirstPlain];
        if (place >= 0)
            return [];
        coded.Read(~place, room);
        return room;
    }

    private void CopyCell(int place, Span<ulong> into)
    {
        if (place >= FirstPlain)
            plain[place - FirstPlain].CopyTo(into);
        else if (place < 0)
            coded.Read(~place, into);
        else
            into.Fill(place == Full ? ulong.MaxValue : 0);
    }

    /// <summary>Makes a cell hold some words in as little memory as it can.</summary>
    private void Keep(ref int place, ReadOnlySpan<ulong> words)
    {
        var before = place;
        place = words[0] is 0 or ulong.MaxValue && !words.ContainsAnyExcept(words[0]) ? (words[0] == 0 ? Blank : Full) : ~coded.Add(words);
        if (before >= FirstPlain)
            plain.GiveUp(before - FirstPlain);
    }

    private Span<ulong> Plain(ref int place)
    {
        var there = Volatile.Read(ref place);
        return plain[(there >= FirstPlain ? there : Made(ref place)) - FirstPlain];
    }

    private int Made(ref int place)
    {
        lock (making)
        {
            // Another thread may have made it while this one waited.
            if (place >= FirstPlain)
                return place;
            var made = plain.Take();
            CopyCell(place, plain[made]);
            Volatile.Write(ref place, made + FirstPlain);
            return made + FirstPlain;
        }
    }
}
