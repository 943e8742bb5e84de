using System.Numerics;
using System.Runtime.CompilerServices;

namespace Silkwright.Film.Measuring;

/// <summary>Small steps on one packed row: counting and finding runs.</summary>
internal static class BitRow
{
    /// <summary>Set pixels in the whole row.</summary>
    public static long Count(ReadOnlySpan<ulong> row)
    {
        var count = 0L;
        foreach (var word in row)
            count += BitOperations.PopCount(word);
        return count;
    }

    /// <summary>The bits of a word, by its number in a row, that are pixels from <paramref name="from"/> up to but not <paramref name="to"/>.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static ulong Between(int word, int from, int to)
    {
        var bits = ulong.MaxValue;
        if (from > word << 6)
            bits &= ulong.MaxValue >> (from & 63);
        if (to < (word + 1) << 6)
            bits &= ~(ulong.MaxValue >> (to & 63));
        return bits;
    }

    /// <summary>Set pixels from <paramref name="from"/> up to but not <paramref name="to"/>; both inside the row.</summary>
    public static int Count(ReadOnlySpan<ulong> row, int from, int to)
    {
        if (to <= from)
            return 0;
        var (first, last) = (from >> 6, (to - 1) >> 6);
        var head = ulong.MaxValue >> (from & 63);
        var tail = ulong.MaxValue << (63 - ((to - 1) & 63));
        if (first == last)
            return BitOperations.PopCount(row[first] & head & tail);
        var count = BitOperations.PopCount(row[first] & head) + BitOperations.PopCount(row[last] & tail);
        for (var i = first + 1; i < last; i++)
            count += BitOperations.PopCount(row[i]);
        return count;
    }

    /// <summary>Writes where the row changes: starts and ends (one past the last pixel) of its runs in turn.</summary>
    /// <param name="row">The row; bits past the width are 0.</param>
    /// <param name="width">[px]</param>
    /// <param name="edges">Room for <paramref name="width"/> + 2 numbers.</param>
    /// <returns>How many numbers were written; even.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static int Edges(ReadOnlySpan<ulong> row, int width, Span<int> edges)
    {
        var count = 0;
        var carry = 0UL;
        for (var i = 0; i < row.Length; i++)
            count = Edges(row[i], ref carry, i, edges, count);

        if ((count & 1) == 1)
            edges[count++] = width;
        return count;
    }

    /// <summary>Writes where one word changes, and before it.</summary>
    /// <param name="word">The word.</param>
    /// <param name="carry">The last pixel before the word; then its own last.</param>
    /// <param name="place">The word's number in its row.</param>
    /// <param name="edges">Where to.</param>
    /// <param name="count">Numbers there.</param>
    /// <returns>Numbers there then.</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static int Edges(ulong word, ref ulong carry, int place, Span<int> edges, int count)
    {
        var change = word ^ ((word >> 1) | (carry << 63));
        carry = word & 1;
        while (change != 0)
        {
            var at = BitOperations.LeadingZeroCount(change);
            edges[count++] = (place << 6) + at;
            change ^= 1UL << (63 - at);
        }

        return count;
    }

    /// <summary>Sets pixels from <paramref name="from"/> up to but not <paramref name="to"/>.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Set(Span<ulong> row, int from, int to)
    {
        if (to <= from)
            return;
        var (first, last) = (from >> 6, (to - 1) >> 6);
        var head = ulong.MaxValue >> (from & 63);
        var tail = ulong.MaxValue << (63 - ((to - 1) & 63));
        if (first == last)
        {
            row[first] |= head & tail;
            return;
        }

        row[first] |= head;
        row[last] |= tail;
        row[(first + 1)..last].Fill(ulong.MaxValue);
    }
}
