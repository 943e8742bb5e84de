using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Silkwright.Film.Measuring;

/// <summary>Cells of a bitmap kept as where their rows change: those of a halftone take a third of the memory of their pixels. Noise is kept as it is.</summary>
/// <remarks>
/// Of a cell are kept: eight bytes with a bit for each row that is unlike the one above it, from the lowest bit up; for each such row the number of changes up to its end; and the changes
/// themselves, the columns whose pixel is unlike the one to its left. Above and to the left of a cell is nothing. Any row is read without the others. Several threads may add and read at once.
/// </remarks>
/// <param name="most">Most cells that are kept.</param>
/// <param name="scratch">Takes what is not kept in memory; none: all is.</param>
internal sealed class CodedCells(int most, ScratchFile? scratch = null)
{
    private const int Rows = FilmBitmap.CellRows;

    /// <summary>Most changes of a cell that is coded: their number is one byte.</summary>
    private const int MostChanges = byte.MaxValue;

    /// <summary>Ends that stand before the first row's, both 0: of a row above all, and of those above it.</summary>
    private const int Before = 2;

    /// <summary>Most bytes of a coded cell, and room for the changes of one row more.</summary>
    private const int MostBytes = sizeof(ulong) + Before + Rows + MostChanges + 64;

    /// <summary>The lowest bit of a cell's place says that it is kept as it is.</summary>
    private const int AsItIs = 1;

    private readonly Slabs slabs = new((long)most * Rows * sizeof(ulong), scratch);

    /// <summary>Memory and scratch taken. [byte]</summary>
    public long Bytes => slabs.Bytes;

    /// <summary>Keeps a cell.</summary>
    /// <param name="rows">Its rows from the top, <see cref="FilmBitmap.CellRows"/> of them.</param>
    /// <returns>Where it is kept, from 0.</returns>
    [SkipLocalsInit]
    public int Add(ReadOnlySpan<ulong> rows)
    {
        Span<byte> room = stackalloc byte[MostBytes];
        var coded = Code(rows, room);
        return coded.IsEmpty ? (slabs.Add(MemoryMarshal.AsBytes(rows)) << 1) | AsItIs : slabs.Add(coded) << 1;
    }

    /// <summary>One row of a cell.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public ulong Row(int place, int row)
    {
        var cell = slabs.From(place >> 1);
        if ((place & AsItIs) != 0)
            return MemoryMarshal.Read<ulong>(cell[(row * sizeof(ulong))..]);
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
        var kept = slabs.From(place >> 1);
        if ((place & AsItIs) != 0)
        {
            MemoryMarshal.Cast<byte, ulong>(kept)[..Rows].CopyTo(into);
            return;
        }

        ref var cell = ref MemoryMarshal.GetReference(kept);
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
    public void Clear() => slabs.Clear();

    /// <summary>A cell as where it changes; nothing where it changes so often that its pixels take less.</summary>
    private static ReadOnlySpan<byte> Code(ReadOnlySpan<ulong> rows, Span<byte> room)
    {
        Span<byte> ends = stackalloc byte[Before + Rows];
        Span<byte> changes = stackalloc byte[MostChanges + 64];
        var (unlike, written, count, above) = (0UL, 0, 0, 0UL);
        ends[..Before].Clear();
        for (var row = 0; row < Rows; row++)
        {
            if (rows[row] == above)
                continue;
            above = rows[row];
            unlike |= 1UL << row;
            for (var rest = above ^ (above >> 1); rest != 0; rest &= ~(1UL << 63 >> changes[count - 1]))
                changes[count++] = (byte)BitOperations.LeadingZeroCount(rest);
            if (count > MostChanges)
                return [];
            ends[Before + written++] = (byte)count;
        }

        MemoryMarshal.Write(room, unlike);
        ends[..(Before + written)].CopyTo(room[sizeof(ulong)..]);
        changes[..count].CopyTo(room[(sizeof(ulong) + Before + written)..]);
        return room[..(sizeof(ulong) + Before + written + count)];
    }
}
