using Silkwright.Film.Readers;

namespace Silkwright.Film.Places;

/// <summary>How far the nearest pixel of the other kind is, or the nearest off the film, from centres about one pixel. All in half pixels.</summary>
internal sealed class NearestOther
{
    /// <summary>Farther than any disc that is tried. [half px]</summary>
    private const int Far = 1 << 14;

    private readonly int[] down;
    private readonly int left;
    private readonly int top;
    private readonly int columns;
    private readonly int rows;
    private readonly int parity;

    /// <param name="film">The film.</param>
    /// <param name="x">The pixel, which also says of which kind the others are not.</param>
    /// <param name="y">The pixel.</param>
    /// <param name="parity">1: centres are pixels' centres; 0: their upper left corners.</param>
    public NearestOther(PackedBitmap film, int x, int y, int parity)
    {
        this.parity = parity;
        (left, top) = (Math.Max(-1, x - LocalWidth.ReachPx), Math.Max(-1, y - LocalWidth.ReachPx));
        (columns, rows) = (Math.Min(film.Width, x + LocalWidth.ReachPx) - left + 1, Math.Min(film.Height, y + LocalWidth.ReachPx) - top + 1);
        down = new int[columns * rows];
        var kind = film[x, y];
        for (var column = 0; column < columns; column++)
            FillColumn(row => IsOther(left + column, top + row), down.AsSpan(column * rows, rows));

        bool IsOther(int px, int py) => px < 0 || py < 0 || px >= film.Width || py >= film.Height || film[px, py] != kind;
    }

    /// <summary>Squared distance to the nearest other, or something no larger than <paramref name="enough"/> as soon as it is known to be no larger.</summary>
    public int SquaredFrom(int centreX, int centreY, int enough)
    {
        var (row, at) = (centreY - top, centreX - left);
        var nearest = int.MaxValue;
        for (var step = 0; step < columns; step++)
        {
            // To the right of a corner lies a pixel at half a pixel, to its left one as near.
            var (right, leftwards) = ((2 * step) + 1 - parity, (2 * step) - 1 + parity);
            if (Math.Min(right, Math.Abs(leftwards)) is var least && least * least >= nearest)
                break;
            Look(at + step, right);
            if (step > 0)
                Look(at - step, leftwards);
            if (nearest <= enough)
                break;
        }

        return nearest;

        void Look(int column, int across)
        {
            if (column < 0 || column >= columns)
                return;
            var vertical = down[(column * rows) + row];
            if (vertical < Far)
                nearest = Math.Min(nearest, (across * across) + (vertical * vertical));
        }
    }

    /// <summary>From every centre of a column of centres, the way up or down to the nearest other pixel of a column of pixels.</summary>
    private void FillColumn(Func<int, bool> isOther, Span<int> ways)
    {
        var last = -Far;
        for (var row = 0; row < rows; row++)
        {
            // A corner lies above its pixel: from it the pixel itself is half a pixel down, the one before half a pixel up.
            if (parity == 1 && isOther(row))
                last = row;
            ways[row] = Math.Min(Far, (2 * row) + parity - (2 * last) - 1);
            if (parity == 0 && isOther(row))
                last = row;
        }

        last = Far;
        for (var row = rows - 1; row >= 0; row--)
        {
            if (isOther(row))
                last = row;
            ways[row] = Math.Min(ways[row], Math.Min(Far, (2 * last) + 1 - (2 * row) - parity));
        }
    }
}
