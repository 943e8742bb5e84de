using System.Buffers.Binary;
using System.Runtime.CompilerServices;

namespace Silkwright.Film.Readers;

/// <summary>Decodes one strip of CCITT group 4 straight into runs, a row at a time, its bytes read as they are needed.</summary>
/// <remarks>ITU-T T.6 (1988), clause 2. Not the uncompressed mode, which is an extension.</remarks>
internal sealed class GroupFourRows
{
    private const int ChunkBytes = 1 << 15;
    private const int WordBytes = 8;

    /// <summary>Changes past the end of a row that the search may look at.</summary>
    private const int Beyond = 4;

    private readonly int width;
    private readonly byte[] chunk = new byte[ChunkBytes];
    private Stream? file;
    private int[] above;
    private int[] row;
    private long left;
    private int at;
    private int end;

    /// <summary>The next bits, the first in the highest place, and how many are good; below 0 once more was taken than there was.</summary>
    private ulong bits;
    private int good;

    public GroupFourRows(int width)
    {
        this.width = width;
        above = new int[width + Beyond + 2];
        row = new int[width + Beyond + 2];
    }

    /// <summary>Starts on a strip: the row above its first is white.</summary>
    public void Start(Stream source, long offset, long bytes)
    {
        (file, left, at, end, bits, good) = (source, bytes, 0, 0, 0, 0);
        source.Position = offset;
        row.AsSpan(0, Beyond).Fill(width);
    }

    /// <summary>The black runs of the next row: starts and ends in turn, good until the next call. False if the strip is damaged or ends too soon.</summary>
    public bool TryNext(out ReadOnlySpan<int> edges)
    {
        (above, row) = (row, above);
        var count = Decode();
        edges = [];
        if (count < 0)
            return false;

        // The row's end is no change, but it ends a run that reaches it.
        if (count > 0 && row[count - 1] == width)
            count--;
        row[count] = width;
        count += count & 1;
        row.AsSpan(count, Beyond).Fill(width);
        edges = row.AsSpan(0, count);
        return true;
    }

    /// <summary>Decodes a row's changes of colour; gives how many there are, or -1 for damage.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private int Decode()
    {
        // Names of T.6: a0 is where the coding stands, b1 the first change above and beyond it to the other colour, at above[b].
        var (a0, b, count, black) = (-1, 0, 0, 0);
        while (a0 < width)
        {
            Refill();
            var word = FaxCodes.Modes[bits >> (64 - FaxCodes.ModeBits)];
            if (word == 0)
                return -1;
            Take(word);
            var mode = word >> 4;
            if (mode < FaxCodes.Pass)
            {
                var a1 = above[b] + mode - 3;
                if (a1 < a0 || a1 < 0 || a1 > width || good < 0)
                    return -1;
                count = Change(count, a1);
                (a0, black) = (a1, black ^ 1);

                // The next change to the other colour is the following one, or after a step to the left perhaps the one before.
                b = mode < 3 && b > 0 ? b - 1 : b + 1;
            }
            else if (mode == FaxCodes.Pass)
            {
                a0 = above[b + 1];
                b += 2;
            }
            else
            {
                var a1 = Math.Max(a0, 0) + Run(black);
                var a2 = a1 + Run(black ^ 1);
                if (a1 > width || a2 > width || good < 0)
                    return -1;
                count = Change(Change(count, a1), a2);
                a0 = a2;
            }

            while (above[b] <= a0 && above[b] < width)
                b += 2;
        }

        return good < 0 ? -1 : count;
    }

    /// <summary>Adds a change of colour; two at one place are none.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private int Change(int count, int place)
    {
        if (count > 0 && row[count - 1] == place)
            return count - 1;
        row[count] = place;
        return count + 1;
    }

    /// <summary>A run of one colour, or more than a row holds for damage. [px]</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private int Run(int black)
    {
        var table = black == 0 ? FaxCodes.White : FaxCodes.Black;
        var run = 0;
        while (true)
        {
            var word = table[bits >> (64 - FaxCodes.RunBits)];
            run += word >> 4;
            if (word == 0 || run > width || good < 0)
                return width + 1;
            Take(word);
            if (word >> 4 < 64)
                return run;
            Refill();
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void Take(int word)
    {
        bits <<= word & 15;
        good -= word & 15;
    }

    /// <summary>Sees to it that 56 bits are good, as far as there are so many: more than a mode and two runs of two words need.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void Refill()
    {
        if (end - at < WordBytes)
        {
            RefillSlowly();
            return;
        }

        if (good >= 56)
            return;
        bits |= BinaryPrimitives.ReadUInt64BigEndian(chunk.AsSpan(at)) >> good;
        at += (63 - good) >> 3;
        good |= 56;
    }

    private void RefillSlowly()
    {
        if (left > 0)
        {
            chunk.AsSpan(at, end - at).CopyTo(chunk);
            (at, end) = (0, end - at);
            var wanted = (int)Math.Min(left, chunk.Length - end);
            file!.ReadExactly(chunk, end, wanted);
            (end, left) = (end + wanted, left - wanted);
        }

        // The bits past the good ones may be there already from a fast refill; they are the same ones.
        while (good is >= 0 and < 56 && at < end)
        {
            bits = (bits & ~(ulong.MaxValue >> good)) | ((ulong)chunk[at++] << (56 - good));
            good += 8;
        }
    }
}
