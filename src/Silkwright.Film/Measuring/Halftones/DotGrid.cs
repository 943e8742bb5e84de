
namespace Silkwright.Film.Measuring.Halftones;

/// <summary>Dots by place, so that the one nearest to a point is found without looking at all.</summary>
internal sealed class DotGrid
{
    private const int CellPx = 24;
    private readonly DotShape[] dots;
    private readonly int across;
    private readonly int down;

    /// <summary>Where each row of cells begins in <see cref="order"/>.</summary>
    private readonly int[] first;

    /// <summary>Numbers of the dots, by cell.</summary>
    private readonly int[] order;

    /// <summary>Column of the cell of each of <see cref="order"/>.</summary>
    private readonly int[] column;

    public DotGrid(DotShape[] dots, int width, int height)
    {
        this.dots = dots;
        across = (width / CellPx) + 1;
        down = (height / CellPx) + 1;
        first = new int[down + 1];
        var cells = new long[dots.Length];
        order = new int[dots.Length];
        column = new int[dots.Length];
        for (var i = 0; i < dots.Length; i++)
        {
            var (x, y) = (Clamp(dots[i].X, across), Clamp(dots[i].Y, down));
            (cells[i], order[i]) = (((((long)y * across) + x) << 32) | (uint)i, i);
            first[y + 1]++;
        }

        Array.Sort(cells, order);
        for (var y = 0; y < down; y++)
            first[y + 1] += first[y];
        for (var k = 0; k < order.Length; k++)
            column[k] = Clamp(dots[order[k]].X, across);
    }

    public DotShape[] Dots => dots;

    /// <summary>The dot nearest to a point and no farther than <paramref name="reach"/>, or -1.</summary>
    /// <param name="x">[px]</param>
    /// <param name="y">[px]</param>
    /// <param name="reach">[px]</param>
    /// <param name="except">A dot that does not count.</param>
    public int Nearest(double x, double y, double reach, int except = -1)
    {
        var best = -1;
        var least = reach * reach;
        var (left, right) = (Clamp(x - reach, across), Clamp(x + reach, across));
        var (top, bottom) = (Clamp(y - reach, down), Clamp(y + reach, down));
        for (var cy = top; cy <= bottom; cy++)
        {
            var end = first[cy + 1];
            for (var k = FirstFrom(left, first[cy], end); k < end && column[k] <= right; k++)
            {
                var i = order[k];
                var (dx, dy) = (dots[i].X - x, dots[i].Y - y);
                var d = (dx * dx) + (dy * dy);
                if (d <= least && i != except)
                    (best, least) = (i, d);
            }
        }

        return best;
    }

    private static int Clamp(double at, int cells) => Math.Clamp((int)(at / CellPx), 0, cells - 1);

    /// <summary>The first of a row of cells that is not left of a column.</summary>
    private int FirstFrom(int left, int from, int end)
    {
        while (from < end)
        {
            var middle = (from + end) >>> 1;
            if (column[middle] < left)
                from = middle + 1;
            else
                end = middle;
        }

        return from;
    }
}
