
namespace Silkwright.Film.Measuring.Halftones;

/// <summary>Dots by place, so that the one nearest to a point is found without looking at all.</summary>
internal sealed class DotGrid
{
    private const int CellPx = 24;
    private readonly DotShape[] dots;
    private readonly int across;
    private readonly int down;
    private readonly int[] first;
    private readonly int[] order;

    public DotGrid(DotShape[] dots, int width, int height)
    {
        this.dots = dots;
        across = (width / CellPx) + 1;
        down = (height / CellPx) + 1;
        first = new int[(across * down) + 1];
        order = new int[dots.Length];
        foreach (var dot in dots)
            first[Cell(dot)]++;
        for (var c = 0; c < across * down; c++)
            first[c + 1] += first[c];

        // Now the end of each cell; laid from the last dot to the first, it becomes its start.
        for (var i = dots.Length - 1; i >= 0; i--)
            order[--first[Cell(dots[i])]] = i;
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
            for (var k = first[(cy * across) + left]; k < first[(cy * across) + right + 1]; k++)
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

    private int Cell(DotShape dot) => (Clamp(dot.Y, down) * across) + Clamp(dot.X, across);
}
