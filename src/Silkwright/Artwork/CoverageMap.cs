namespace Silkwright.Artwork;

/// <summary>A film's coarse coverage, to be turned, shifted and held against another's.</summary>
internal sealed class CoverageMap
{
    private readonly double[] cells;
    private readonly int across;
    private readonly int down;

    private CoverageMap(double[] cells, int across, int down)
    {
        (this.cells, this.across, this.down) = (cells, across, down);
        for (var y = 0; y < down; y++)
        {
            for (var x = 0; x < across; x++)
            {
                var share = cells[(y * across) + x];
                Sum += share;
                MiddleX += share * x;
                MiddleY += share * y;
            }
        }

        if (Sum > 0)
            (MiddleX, MiddleY) = (MiddleX / Sum, MiddleY / Sum);
    }

    /// <summary>All shares together. [cells]</summary>
    public double Sum { get; }

    /// <summary>Centre of gravity of what prints. [cells]</summary>
    public double MiddleX { get; }

    /// <summary>Centre of gravity of what prints. [cells]</summary>
    public double MiddleY { get; }

    /// <summary>A layout on cells of a side that is its own, doubled some times.</summary>
    public static CoverageMap Of(FilmLayout layout, double cellMm)
    {
        var times = Math.Max(1, (int)Math.Round(cellMm / layout.CellMm));
        var (across, down) = ((layout.Across + times - 1) / times, (layout.Down + times - 1) / times);
        var cells = new double[across * down];
        var given = layout.Coverage.Span;
        for (var y = 0; y < layout.Down; y++)
        {
            for (var x = 0; x < layout.Across; x++)
                cells[(y / times * across) + (x / times)] += given[(y * layout.Across) + x] / (255.0 * times * times);
        }

        return new CoverageMap(cells, across, down);
    }

    /// <summary>The same laid otherwise.</summary>
    public CoverageMap Turned(FilmTurn turn)
    {
        if (turn == FilmTurn.None)
            return this;
        var other = new double[cells.Length];
        for (var y = 0; y < down; y++)
        {
            for (var x = 0; x < across; x++)
            {
                var from = turn is FilmTurn.Mirrored or FilmTurn.TurnedHalf ? across - 1 - x : x;
                other[(y * across) + x] = cells[((turn == FilmTurn.Mirrored ? y : down - 1 - y) * across) + from];
            }
        }

        return new CoverageMap(other, across, down);
    }

    /// <summary>How alike two maps are once their centres of gravity lie on each other, 0 (nothing in common) to 1: equation 10.</summary>
    public static double Alike(CoverageMap a, CoverageMap b)
    {
        if (a.Sum <= 0 || b.Sum <= 0)
            return 0;

        // Each goes half of the way, so that both are blurred alike.
        var (x, y) = ((b.MiddleX - a.MiddleX) / 2, (b.MiddleY - a.MiddleY) / 2);
        var (left, top) = ((int)Math.Ceiling(Math.Abs(x)) + 1, (int)Math.Ceiling(Math.Abs(y)) + 1);
        double apart = 0, both = 0;
        for (var j = -top; j < Math.Max(a.down, b.down) + top; j++)
        {
            for (var i = -left; i < Math.Max(a.across, b.across) + left; i++)
            {
                var (one, other) = (a.Blurred(i - x, j - y), b.Blurred(i + x, j + y));
                apart += Math.Abs(one - other);
                both += one + other;
            }
        }

        return both > 0 ? 1 - (apart / both) : 0;
    }

    /// <summary>Share of this map's image that lies on another's, both counted from the same corner.</summary>
    public double ShareOn(CoverageMap other)
    {
        var shared = 0.0;
        for (var y = 0; y < Math.Min(down, other.down); y++)
        {
            for (var x = 0; x < Math.Min(across, other.across); x++)
                shared += Math.Min(cells[(y * across) + x], other.cells[(y * other.across) + x]);
        }

        return Sum > 0 ? shared / Sum : 0;
    }

    /// <summary>Mean of 3 x 3 cells about a place, so that where the cells happen to lie tells little.</summary>
    private double Blurred(double x, double y)
    {
        var (left, top) = ((int)Math.Floor(x), (int)Math.Floor(y));
        var (u, v) = (x - left, y - top);
        var sum = 0.0;
        for (var j = -1; j <= 2; j++)
        {
            var tall = j == -1 ? 1 - v : j == 2 ? v : 1;
            for (var i = -1; i <= 2; i++)
                sum += tall * (i == -1 ? 1 - u : i == 2 ? u : 1) * At(left + i, top + j);
        }

        return sum / 9;
    }

    private double At(int x, int y) => x < 0 || y < 0 || x >= across || y >= down ? 0 : cells[(y * across) + x];
}
