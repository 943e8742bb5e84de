using Silkwright.Film.Readers;

namespace Silkwright.Film.Measuring;

/// <summary>Parts of a film marked for work, in cells of one word by <see cref="CellRows"/> rows.</summary>
internal sealed class TileMap(PackedBitmap film)
{
    /// <summary>Rows of a cell.</summary>
    public const int CellRows = 64;

    private readonly bool[] cells = new bool[film.Stride * ((film.Height + CellRows - 1) / CellRows)];

    /// <summary>Marks the cells that hold a pixel of a row of words.</summary>
    public void Mark(int word, int row) => cells[(row / CellRows * film.Stride) + word] = true;

    /// <summary>Whether a cell is marked.</summary>
    public bool this[int word, int row] => cells[(row / CellRows * film.Stride) + word];

    /// <summary>Whether any cell of a block is marked; the block may reach past the film.</summary>
    public bool Any(int word, int words, int row, int rows)
    {
        var lastRow = Math.Min(film.Height, row + rows) - 1;
        for (var cell = row / CellRows; cell <= lastRow / CellRows; cell++)
        {
            if (cells.AsSpan((cell * film.Stride) + word, Math.Min(words, film.Stride - word)).Contains(true))
                return true;
        }

        return false;
    }
}
