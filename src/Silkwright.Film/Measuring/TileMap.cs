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

    /// <summary>The cells that a mask does not hide altogether.</summary>
    public static TileMap NotHidden(PackedBitmap film, SparseBitmap mask)
    {
        var map = new TileMap(film);
        for (var y = 0; y < film.Height; y++)
        {
            var open = map.cells.AsSpan(y / CellRows * film.Stride, film.Stride);
            if (mask.IsBlank(y))
            {
                open.Fill(true);
                continue;
            }

            var row = mask.Row(y);
            for (var word = 0; word < row.Length; word++)
                open[word] |= row[word] != (word == row.Length - 1 ? film.LastMask : ulong.MaxValue);
        }

        return map;
    }

    /// <summary>Keeps of the marks those that another map has too.</summary>
    public void KeepIn(TileMap other)
    {
        for (var i = 0; i < cells.Length; i++)
            cells[i] &= other.cells[i];
    }

    /// <summary>The smallest part of a block that holds all its marked cells; no words where none is. The block may reach past the film.</summary>
    public OpeningTile Shrunk(int word, int words, int row, int rows)
    {
        words = Math.Min(words, film.Stride - word);
        var bottom = Math.Min(film.Height, row + rows);
        var (left, right, top, end) = (words, 0, bottom, row);
        for (var y = row; y < bottom; y += CellRows)
        {
            var line = cells.AsSpan((y / CellRows * film.Stride) + word, words);
            var first = line.IndexOf(true);
            if (first < 0)
                continue;
            (left, right) = (Math.Min(left, first), Math.Max(right, line.LastIndexOf(true) + 1));
            (top, end) = (Math.Min(top, y), Math.Min(bottom, y + CellRows));
        }

        return right == 0 ? default : new OpeningTile(word + left, right - left, top, end - top);
    }
}
