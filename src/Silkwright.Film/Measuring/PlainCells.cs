namespace Silkwright.Film.Measuring;

/// <summary>Cells of a bitmap kept row by row, to be written.</summary>
/// <remarks>Several threads may take and write cells at once.</remarks>
/// <param name="most">Most cells that are taken.</param>
internal sealed class PlainCells(int most)
{
    /// <summary>Cells that are allocated together: 256 KiB.</summary>
    private const int SlabCells = 1 << SlabBits;
    private const int SlabBits = 9;

    private readonly ulong[]?[] slabs = new ulong[]?[(most >> SlabBits) + 1];
    private readonly Stack<int> givenUp = new();
    private int taken;

    /// <summary>Cells in use or kept to be used again.</summary>
    public int Taken => Volatile.Read(ref taken);

    /// <summary>The rows of a cell.</summary>
    public Span<ulong> this[int cell] => slabs[cell >> SlabBits].AsSpan((cell & (SlabCells - 1)) * FilmBitmap.CellRows, FilmBitmap.CellRows);

    /// <summary>A cell that nobody uses; what its rows hold is left over. The caller sees to it that one thread at a time asks.</summary>
    public int Take()
    {
        if (givenUp.TryPop(out var cell))
            return cell;
        slabs[taken >> SlabBits] ??= GC.AllocateUninitializedArray<ulong>(SlabCells * FilmBitmap.CellRows);
        return taken++;
    }

    /// <summary>Gives a cell back. The caller sees to it that one thread at a time does.</summary>
    public void GiveUp(int cell) => givenUp.Push(cell);

    /// <summary>Gives all cells back; the memory stays.</summary>
    public void Clear()
    {
        givenUp.Clear();
        taken = 0;
    }
}
