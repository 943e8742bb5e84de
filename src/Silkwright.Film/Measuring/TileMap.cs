namespace Silkwright.Film.Measuring;

/// <summary>Parts of a film marked for work, a bit for each cell.</summary>
/// <remarks>Several threads may mark at once, each its own rows of cells.</remarks>
internal sealed class TileMap(FilmBitmap film)
{
    private const int CellRows = FilmBitmap.CellRows;

    /// <summary>Words of a row of cells, the leftmost cell in the highest bit.</summary>
    private readonly int across = (film.Stride + 63) >> 6;
    private readonly ulong[] cells = new ulong[((film.Stride + 63) >> 6) * film.CellsDown];

    /// <summary>Nothing is marked.</summary>
    public bool IsEmpty => !cells.AsSpan().ContainsAnyExcept(0UL);

    /// <summary>Whether a cell is marked.</summary>
    public bool this[int word, int row] => (cells[(row / CellRows * across) + (word >> 6)] & Bit(word)) != 0;

    /// <summary>Marks the cells that hold a pixel of a row of words.</summary>
    public void Mark(int word, int row) => cells[(row / CellRows * across) + (word >> 6)] |= Bit(word);

    /// <summary>The cells that a mask does not hide altogether.</summary>
    public static TileMap NotHidden(FilmBitmap film, FilmBitmap mask)
    {
        var map = new TileMap(film);
        Span<ulong> room = stackalloc ulong[CellRows];
        for (var cell = 0; cell < film.CellsDown; cell++)
        {
            var rows = Math.Min(CellRows, film.Height - (cell * CellRows));
            for (var word = 0; word < film.Stride; word++)
            {
                var hidden = mask.Cell(word, cell, room, out var alike);
                if (hidden.IsEmpty ? alike == 0 : hidden[..rows].ContainsAnyExcept(word == film.Stride - 1 ? film.LastMask : ulong.MaxValue))
                    map.Mark(word, cell * CellRows);
            }
        }

        return map;
    }

    /// <summary>Marks the cells of a piece's box that another map marks.</summary>
    public void Mark(in Blob piece, TileMap among)
    {
        var (left, right) = (piece.Left >> 6, ((piece.Right - 1) >> 6) + 1);
        for (var cell = piece.Top / CellRows; cell <= piece.Bottom / CellRows; cell++)
        {
            for (var i = left >> 6; i << 6 < right; i++)
                cells[(cell * across) + i] |= among.cells[(cell * across) + i] & BitRow.Between(i, left, right);
        }
    }

    /// <summary>Tiles that hold every marked cell, in blocks of rows; marked cells no farther apart than a join share a tile.</summary>
    /// <param name="words">Most words of a tile.</param>
    /// <param name="rows">Rows of a block, a whole number of cells.</param>
    /// <param name="join">Unmarked words between two marked ones that are taken along.</param>
    public List<OpeningTile> Tiles(int words, int rows, int join)
    {
        var tiles = new List<OpeningTile>();
        var (top, end) = (new int[film.Stride], new int[film.Stride]);
        for (var row = 0; row < film.Height; row += rows)
        {
            Columns(row, Math.Min(film.Height, row + rows), top, end);
            for (var word = 0; word < film.Stride;)
            {
                if (end[word] == 0)
                {
                    word++;
                    continue;
                }

                var (last, first, bottom) = (word, top[word], end[word]);
                for (var next = word + 1; next < Math.Min(film.Stride, word + words) && next <= last + join + 1; next++)
                {
                    if (end[next] > 0)
                        (last, first, bottom) = (next, Math.Min(first, top[next]), Math.Max(bottom, end[next]));
                }

                tiles.Add(new OpeningTile(word, last + 1 - word, first, bottom - first));
                word = last + 1;
            }
        }

        return tiles;
    }

    /// <summary>First row and end of the marked cells in each column of words of a block; end 0 where there are none.</summary>
    private void Columns(int row, int bottom, int[] top, int[] end)
    {
        Array.Clear(end);
        for (var y = row; y < bottom; y += CellRows)
        {
            for (var word = 0; word < film.Stride; word++)
            {
                if (!this[word, y])
                    continue;
                if (end[word] == 0)
                    top[word] = y;
                end[word] = Math.Min(bottom, y + CellRows);
            }
        }
    }

    private static ulong Bit(int word) => 1UL << (63 - (word & 63));
}
