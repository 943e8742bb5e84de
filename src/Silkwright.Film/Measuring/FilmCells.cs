using System.Runtime.CompilerServices;
using Silkwright.Film.Readers;

namespace Silkwright.Film.Measuring;

/// <summary>Which cells of a film (one word by <see cref="TileMap.CellRows"/> rows) are all image, all gap or hold both.</summary>
internal sealed class FilmCells
{
    private readonly State[] cells;
    private readonly int across;
    private readonly int down;

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public FilmCells(PackedBitmap bits)
    {
        (across, down) = (bits.Stride, (bits.Height + TileMap.CellRows - 1) / TileMap.CellRows);
        cells = new State[across * down];
        var (any, all) = (new ulong[across], new ulong[across]);
        for (var cell = 0; cell < down; cell++)
        {
            any.AsSpan().Clear();
            all.AsSpan().Fill(ulong.MaxValue);
            for (var y = cell * TileMap.CellRows; y < Math.Min(bits.Height, (cell + 1) * TileMap.CellRows); y++)
                PackedRows.Gather(bits.Row(y), any, all);
            all[^1] |= ~bits.LastMask;
            for (var word = 0; word < across; word++)
                cells[(cell * across) + word] = any[word] == 0 ? State.Gap : all[word] == ulong.MaxValue ? State.Image : State.Both;
        }
    }

    private enum State : byte
    {
        Gap,
        Image,
        Both,
    }

    /// <summary>
    /// The cells from which opening by a disc can remove anything: they hold what is opened, and something else, or the film's edge,
    /// lies within the disc's width.
    /// </summary>
    /// <param name="film">The film.</param>
    /// <param name="gap">The gap is opened instead of the image.</param>
    /// <param name="diameter">The disc's. [px]</param>
    public TileMap Openable(PackedBitmap film, bool gap, int diameter)
    {
        var map = new TileMap(film);
        var full = gap ? State.Gap : State.Image;
        var (beside, above) = ((diameter + 63) / 64, (diameter + TileMap.CellRows - 1) / TileMap.CellRows);
        for (var cell = 0; cell < down; cell++)
        {
            for (var word = 0; word < across; word++)
            {
                var state = cells[(cell * across) + word];
                if (state == State.Both || (state == full && !IsAmong(full, word, beside, cell, above)))
                    map.Mark(word, cell * TileMap.CellRows);
            }
        }

        return map;
    }

    /// <summary>All cells about one are on the film and of one state.</summary>
    private bool IsAmong(State state, int word, int beside, int cell, int above)
    {
        if (word < beside || cell < above || word + beside >= across || cell + above >= down)
            return false;
        for (var y = cell - above; y <= cell + above; y++)
        {
            if (cells.AsSpan((y * across) + word - beside, (2 * beside) + 1).IndexOfAnyExcept(state) >= 0)
                return false;
        }

        return true;
    }
}
