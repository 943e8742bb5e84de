
namespace Silkwright.Film.Measuring.Halftones;

/// <summary>Dots by place, so that the one nearest to a point is found without looking at all.</summary>
internal sealed class DotGrid
{
    private const int CellPx = 24;
    private readonly ScreenDots dots;
    private readonly int across;
    private readonly int down;

    /// <summary>Rows of the film above its first cells.</summary>
    private readonly int above;

    /// <summary>Where each row of cells begins in <see cref="order"/>.</summary>
    private readonly int[] first;

    /// <summary>Numbers of the dots, by cell.</summary>
    private readonly int[] order;

    /// <summary>Column of the cell of each of <see cref="order"/>.</summary>
    private readonly ushort[] column;

    /// <param name="dots">From the top down.</param>
    /// <param name="width">The film's. [px]</param>
    public DotGrid(ScreenDots dots, int width)
    {
        this.dots = dots;
        across = (width / CellPx) + 1;
        above = dots.Count == 0 ? 0 : (int)(dots[0].Y / CellPx) * CellPx;
        down = dots.Count == 0 ? 1 : (int)((dots[dots.Count - 1].Y - above) / CellPx) + 1;
        first = new int[down + 1];
        for (var i = 0; i < dots.Count; i++)
            first[Row(i) + 1] += dots.MayBeDot(i) ? 1 : 0;
        for (var y = 0; y < down; y++)
            first[y + 1] += first[y];
        order = new int[first[down]];
        column = new ushort[first[down]];
        Fill();
    }

    public ScreenDots Dots => dots;

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
        var (top, bottom) = (Clamp(y - above - reach, down), Clamp(y - above + reach, down));
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

    private int Row(int dot) => Clamp(dots[dot].Y - above, down);

    /// <summary>Puts the dots of each row in order of their columns. They come row by row.</summary>
    private void Fill()
    {
        var row = new List<long>();
        for (var i = 0; i < dots.Count;)
        {
            var y = Row(i);
            row.Clear();
            for (; i < dots.Count && Row(i) == y; i++)
            {
                if (dots.MayBeDot(i))
                    row.Add(((long)Clamp(dots[i].X, across) << 32) | (uint)i);
            }

            row.Sort();
            for (var k = 0; k < row.Count; k++)
                (order[first[y] + k], column[first[y] + k]) = ((int)row[k], (ushort)(row[k] >> 32));
        }
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
