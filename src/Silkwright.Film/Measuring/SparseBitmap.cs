using Silkwright.Film.Readers;

namespace Silkwright.Film.Measuring;

/// <summary>A bitmap as large as a film and mostly blank: only blocks that were written take memory.</summary>
/// <remarks>Several threads may write at once, each its own words. A block is as high as a cell of <see cref="TileMap"/>.</remarks>
internal sealed class SparseBitmap
{
    private const int BlockWords = 2;
    private const int BlockRows = TileMap.CellRows;

    /// <summary>Stands for every block whose pixels are all set; never written to.</summary>
    private static readonly ulong[] Full = [.. Enumerable.Repeat(ulong.MaxValue, BlockWords * BlockRows)];

    private readonly ulong[]?[] blocks;
    private readonly bool[] written;
    private readonly int across;

    /// <summary>Blank blocks that were given up, to be written again.</summary>
    private readonly Stack<ulong[]> spare = new();

    /// <summary>A blank one of a film's size.</summary>
    public SparseBitmap(PackedBitmap film)
    {
        (Width, Height, Stride) = (film.Width, film.Height, film.Stride);
        across = (Stride + BlockWords - 1) / BlockWords;
        blocks = new ulong[]?[across * ((film.Height + BlockRows - 1) / BlockRows)];
        written = new bool[film.Height];
    }

    /// <summary>[px]</summary>
    public int Width { get; }

    /// <summary>[px]</summary>
    public int Height { get; }

    /// <summary>Words in a row.</summary>
    public int Stride { get; }

    public bool this[int x, int y] => (Word(y, x >> 6) & (1UL << (63 - (x & 63)))) != 0;

    /// <summary>Nothing was written to a row since all was cleared.</summary>
    public bool IsBlank(int y) => !written[y];

    /// <summary>A word to read.</summary>
    public ulong Word(int y, int word) => blocks[Block(y, word)] is { } block ? block[Place(y, word)] : 0;

    /// <summary>A word to write.</summary>
    public ref ulong Writable(int y, int word)
    {
        ref var block = ref blocks[Block(y, word)];
        var there = Volatile.Read(ref block);
        if (there is null || there == Full)
            there = Made(ref block, there);
        written[y] = true;
        return ref there[Place(y, word)];
    }

    /// <summary>Writes where a row changes: starts and ends of its runs in turn.</summary>
    /// <param name="y">The row.</param>
    /// <param name="edges">Room for <see cref="Width"/> + 2 numbers.</param>
    /// <returns>How many numbers were written; even.</returns>
    public int Edges(int y, Span<int> edges)
    {
        var (count, carry, first) = (0, 0UL, y / BlockRows * across);
        for (var i = 0; i < across; i++)
        {
            if (blocks[first + i] is not { } block)
            {
                if (carry == 1)
                    edges[count++] = i * BlockWords * 64;
                carry = 0;
                continue;
            }

            var part = block.AsSpan(y % BlockRows * BlockWords, BlockWords);
            for (var k = 0; k < BlockWords; k++)
                count = BitRow.Edges(part[k], ref carry, (i * BlockWords) + k, edges, count);
        }

        if ((count & 1) == 1)
            edges[count++] = Width;
        return count;
    }

    /// <summary>Sets pixels of a row from <paramref name="from"/> up to but not <paramref name="to"/>.</summary>
    public void Set(int y, int from, int to)
    {
        if (to <= from)
            return;
        var (first, last) = (from >> 6, (to - 1) >> 6);
        for (var word = first; word <= last; word++)
        {
            var bits = ulong.MaxValue;
            if (word == first)
                bits &= ulong.MaxValue >> (from & 63);
            if (word == last)
                bits &= ulong.MaxValue << (63 - ((to - 1) & 63));
            if ((Word(y, word) & bits) != bits)
                Writable(y, word) |= bits;
        }
    }

    /// <summary>Lets blocks whose pixels are all set share one. No other thread may write meanwhile.</summary>
    public void Compact()
    {
        for (var i = 0; i < blocks.Length; i++)
        {
            if (blocks[i] is not { } block || block == Full)
                continue;
            if (!PackedRows.IsAll(block, ulong.MaxValue))
                continue;
            GiveUp(block);
            blocks[i] = Full;
        }
    }

    /// <summary>Blanks every row; the memory stays, to be written again. No other thread may write meanwhile.</summary>
    public void Clear()
    {
        for (var i = 0; i < blocks.Length; i++)
        {
            if (blocks[i] is { } block && block != Full)
                GiveUp(block);
            blocks[i] = null;
        }

        written.AsSpan().Clear();
    }

    private ulong[] Made(ref ulong[]? block, ulong[]? was)
    {
        lock (spare)
        {
            // Another thread may have made it while this one waited.
            if (block != was)
                return block!;
            if (!spare.TryPop(out var made))
                made = new ulong[BlockWords * BlockRows];
            if (was == Full)
                made.AsSpan().Fill(ulong.MaxValue);
            Volatile.Write(ref block, made);
            return made;
        }
    }

    private void GiveUp(ulong[] block)
    {
        block.AsSpan().Clear();
        spare.Push(block);
    }

    private static int Place(int y, int word) => (y % BlockRows * BlockWords) + (word % BlockWords);

    private int Block(int y, int word) => (y / BlockRows * across) + (word / BlockWords);
}
