using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Silkwright.Film.Measuring;

/// <summary>Cells of a bitmap kept as where their rows change: those of a halftone take a third of the memory of their pixels.</summary>
/// <remarks>
/// Of a cell are kept: eight bytes with a bit for each row that is unlike the one above it, from the lowest bit up; for each such row the number of changes up to its end; and the changes
/// themselves, the columns whose pixel is unlike the one to its left. Above and to the left of a cell is nothing. Any row is read without the others. Several threads may add and read at once.
/// </remarks>
internal sealed class CodedCells
{
    private const int Rows = FilmBitmap.CellRows;

    /// <summary>A cell that takes more is not worth coding. [byte]</summary>
    private const int MostBytes = 384;

    /// <summary>Ends that stand before the first row's, both 0: of a row above all, and of those above it.</summary>
    private const int Before = 2;

    /// <summary>Cells begin at multiples of this. [byte]</summary>
    private const int Granule = 8;

    /// <summary>Granules that are allocated together: 256 KiB.</summary>
    private const int SlabGranules = 1 << SlabBits;
    private const int SlabBits = 15;

    private readonly Lock adding = new();
    private byte[]?[] slabs = new byte[]?[16];
    private int end;

    /// <summary>Memory taken. [byte]</summary>
    public long Bytes => (long)Granule * Volatile.Read(ref end);

    /// <summary>Keeps a cell.</summary>
    /// <param name="rows">Its rows from the top, <see cref="FilmBitmap.CellRows"/> of them.</param>
    /// <param name="place">Where it is kept, from 0.</param>
    /// <returns>False, and nothing is kept, where it changes so often that it is not worth coding.</returns>
    [SkipLocalsInit]
    public bool TryAdd(ReadOnlySpan<ulong> rows, out int place)
    {
        Span<byte> ends = stackalloc byte[Before + Rows];
        Span<byte> changes = stackalloc byte[MostBytes + 64];
        var (unlike, written, count, above) = (0UL, 0, 0, 0UL);
        place = -1;
        ends[..Before].Clear();
        for (var row = 0; row < Rows; row++)
        {
            if (rows[row] == above)
                continue;
            above = rows[row];
            unlike |= 1UL << row;
            for (var rest = above ^ (above >> 1); rest != 0; rest &= ~(1UL << 63 >> changes[count - 1]))
                changes[count++] = (byte)BitOperations.LeadingZeroCount(rest);
            if (count > byte.MaxValue)
                return false;
            ends[Before + written++] = (byte)count;
        }

        var bytes = sizeof(ulong) + Before + written + count;
        if (bytes > MostBytes)
            return false;
        var into = Room(bytes, out place);
        MemoryMarshal.Write(into, unlike);
        ends[..(Before + written)].CopyTo(into[sizeof(ulong)..]);
        changes[..count].CopyTo(into[(sizeof(ulong) + Before + written)..]);
        return true;
    }

    /// <summary>One row of a cell.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public ulong Row(int place, int row)
    {
        var cell = Cell(place);
        var unlike = MemoryMarshal.Read<ulong>(cell);
        var which = BitOperations.PopCount(unlike & (ulong.MaxValue >> (Rows - 1 - row)));
        var ends = cell[sizeof(ulong)..];
        var changes = ends[(BitOperations.PopCount(unlike) + Before)..];
        var word = 0UL;
        foreach (var column in changes[ends[which]..ends[which + 1]])
            word ^= ulong.MaxValue >> column;
        return word;
    }

    /// <summary>All rows of a cell, <see cref="FilmBitmap.CellRows"/> of them.</summary>
    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Read(int place, Span<ulong> into)
    {
        ref var cell = ref MemoryMarshal.GetReference(Cell(place));
        var unlike = Unsafe.ReadUnaligned<ulong>(ref cell);
        var written = BitOperations.PopCount(unlike);
        ref var ends = ref Unsafe.Add(ref cell, sizeof(ulong));
        ref var changes = ref Unsafe.Add(ref ends, written + Before);

        // What all changes up to one make together: a row is what those up to its end make less those up to its start. No branch hangs on the picture.
        Span<ulong> room = stackalloc ulong[byte.MaxValue + 1];
        ref var upTo = ref MemoryMarshal.GetReference(room);
        var together = upTo = 0;
        int count = Unsafe.Add(ref ends, written + 1);
        for (var i = 0; i < count; i++)
            Unsafe.Add(ref upTo, i + 1) = together ^= ulong.MaxValue >> Unsafe.Add(ref changes, i);
        for (var row = 0; row < Rows; row++)
        {
            ends = ref Unsafe.Add(ref ends, (int)(unlike >> row & 1));
            into[row] = Unsafe.Add(ref upTo, Unsafe.Add(ref ends, 1)) ^ Unsafe.Add(ref upTo, ends);
        }
    }

    /// <summary>Forgets all cells; the memory stays, to be used again. No other thread may add or read meanwhile.</summary>
    public void Clear() => end = 0;

    private ReadOnlySpan<byte> Cell(int place) => slabs[place >> SlabBits].AsSpan((place & (SlabGranules - 1)) * Granule);

    private Span<byte> Room(int bytes, out int place)
    {
        var granules = (bytes + Granule - 1) / Granule;
        lock (adding)
        {
            // A cell lies in one slab.
            if ((end & (SlabGranules - 1)) + granules > SlabGranules)
                end = ((end >> SlabBits) + 1) << SlabBits;
            place = end;
            end += granules;
            var slab = place >> SlabBits;
            if (slab == slabs.Length)
                Array.Resize(ref slabs, 2 * slab);
            slabs[slab] ??= GC.AllocateUninitializedArray<byte>(SlabGranules * Granule);
            return slabs[slab].AsSpan((place & (SlabGranules - 1)) * Granule, bytes);
        }
    }
}
