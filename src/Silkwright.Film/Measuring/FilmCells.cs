using System.Runtime.CompilerServices;

namespace Silkwright.Film.Measuring;

/// <summary>Which cells of a film (one word by <see cref="FilmBitmap.CellRows"/> rows) are all image, all gap or hold both.</summary>
internal sealed class FilmCells
{
    private readonly State[] cells;
    private readonly int across;
    private readonly int down;

    public FilmCells(FilmBitmap bits)
    {
        (across, down) = (bits.Stride, bits.CellsDown);
        cells = new State[across * down];
        _ = Parallel.For(0, down, new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount }, cell => ReadRow(bits, cell));
    }

    private enum State : byte
    {
        Gap,
        Image,
        Both,
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void ReadRow(FilmBitmap bits, int cell)
    {
        Span<ulong> room = stackalloc ulong[FilmBitmap.CellRows];
        var rows = Math.Min(bits.Height - (cell * FilmBitmap.CellRows), FilmBitmap.CellRows);
        for (var word = 0; word < across; word++)
        {
            var pixels = word == across - 1 ? bits.LastMask : ulong.MaxValue;
            var words = bits.Cell(word, cell, room, out var alike);
            cells[(cell * across) + word] = words.IsEmpty ? (alike == 0 ? State.Gap : State.Image)
                : !words[..rows].ContainsAnyExcept(pixels) ? State.Image
                : !words[..rows].ContainsAnyExcept(0UL) ? State.Gap
                : State.Both;
        }
    }

    /// <summary>
    /// The cells from which opening by a disc can remove anything: they hold what is opened, and something else, or the film's edge,
    /// lies within the disc's width.
    /// </summary>
    /// <param name="film">The film.</param>
    /// <param name="gap">The gap is opened instead of the image.</param>
    /// <param name="diameter">The disc's. [px]</param>
    /// <param name="only">Cells that are looked at; none: all.</param>
    public TileMap Openable(FilmBitmap film, bool gap, int diameter, TileMap? only)
    {
        var map = new TileMap(film);
        var full = gap ? State.Gap : State.Image;
        var (beside, above) = ((diameter + 63) / 64, (diameter + FilmBitmap.CellRows - 1) / FilmBitmap.CellRows);
        for (var cell = 0; cell < down; cell++)
        {
            for (var word = 0; word < across; word++)
            {
                var state = cells[(cell * across) + word];
                if (only is not null && !only[word, cell * FilmBitmap.CellRows])
                    continue;
                if (state == State.Both || (state == full && !IsAmong(full, word, beside, cell, above)))
                    map.Mark(word, cell * FilmBitmap.CellRows);
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
