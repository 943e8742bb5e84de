namespace Silkwright.Film.Measuring.Halftones;

/// <summary>Finds dots that stand among their neighbours as on a square lattice, and groups them.</summary>
internal static class LatticeGroups
{
    /// <summary>Fewest dots that make a lattice.</summary>
    public const int LeastDots = 24;

    /// <summary>Coarsest and finest ruling looked for. [1/in] Common practice of textile screens is 25 to 85.</summary>
    public const double LeastLpi = 15;

    public const double MostLpi = 200;

    private const double NeighbourTolerance = 0.2;
    private const double PeriodTolerance = 0.12;
    private const double AngleTolerance = 8 * Math.PI / 180;

    /// <summary>The site of a dot that has none.</summary>
    private static readonly (int I, int J) Nowhere = (int.MinValue, int.MinValue);

    /// <summary>And of one from which too few others were reached.</summary>
    private static readonly (int I, int J) LedNowhere = (int.MinValue, 0);

    /// <summary>The groups, the largest first; their members are numbered as among all dots of the film.</summary>
    /// <param name="dots">Of a swath.</param>
    /// <param name="width">The film's. [px]</param>
    /// <param name="dpi">[1/in]</param>
    /// <param name="cancel">Stops the work.</param>
    public static IReadOnlyList<DotGroup> Find(ScreenDots dots, int width, double dpi, CancellationToken cancel)
    {
        var grid = new DotGrid(dots, width);
        var count = grid.Dots.Count;
        var near = new int[4 * count];
        var period = new float[count];
        var angle = new float[count];
        _ = Parallel.For(0, (count + 4095) / 4096, new ParallelOptions { CancellationToken = cancel }, block =>
        {
            for (var i = block * 4096; i < Math.Min(count, (block + 1) * 4096); i++)
                (period[i], angle[i]) = Local(grid, i, dpi, near.AsSpan(4 * i, 4));
        });
        var sets = new UnionFind(count);
        for (var i = 0; i < count; i++)
        {
            for (var k = 0; k < 4 && period[i] > 0; k++)
            {
                var other = near[(4 * i) + k];
                if (other >= 0 && period[other] > 0 && Math.Abs(period[other] - period[i]) < PeriodTolerance * period[i]
                    && Apart(angle[other], angle[i]) < AngleTolerance)
                {
                    sets.Join(i, other);
                }
            }
        }

        var sites = new (int I, int J)[count];
        Array.Fill(sites, Nowhere);
        return
        [
            .. Groups(sets, period).OrderByDescending(g => g.Length).Select(g => Fit(grid, g, sets, sites, near, period, angle)).OfType<DotGroup>().Select(InAll),
        ];

        DotGroup InAll(DotGroup group) => dots.First == 0 ? group : group with { Members = Array.ConvertAll(group.Members, m => dots.First + m) };
    }

    /// <summary>The dots of each group that is large enough, groups in the order of their first dots.</summary>
    private static IEnumerable<int[]> Groups(UnionFind sets, float[] period)
    {
        var sizes = new int[period.Length];
        for (var i = 0; i < period.Length; i++)
            sizes[sets.Root(i)] += period[i] > 0 ? 1 : 0;
        var groups = new Dictionary<int, (int[] Members, int Count)>();
        for (var i = 0; i < period.Length; i++)
        {
            var root = sets.Root(i);
            if (period[i] <= 0 || sizes[root] < LeastDots)
                continue;
            var (members, count) = groups.TryGetValue(root, out var group) ? group : (new int[sizes[root]], 0);
            members[count] = i;
            groups[root] = (members, count + 1);
        }

        return groups.Values.Select(g => g.Members);
    }

    /// <summary>Difference of two angles modulo a quarter turn. [rad]</summary>
    private static double Apart(double a, double b) => Math.Abs(Math.IEEERemainder(a - b, Math.PI / 2));

    /// <summary>Period and angle about one dot if three of its four lattice neighbours are there; else period 0.</summary>
    private static (float Period, float Angle) Local(DotGrid grid, int i, double dpi, Span<int> near)
    {
        near.Fill(-1);
        if (!grid.Dots.MayBeDot(i))
            return (0, 0);
        var dot = grid.Dots[i];
        var closest = -1;
        for (var reach = dpi / MostLpi * 3; closest < 0; reach *= 2)
        {
            closest = grid.Nearest(dot.X, dot.Y, Math.Min(reach, dpi / LeastLpi), i);
            if (reach >= dpi / LeastLpi)
                break;
        }

        if (closest < 0)
            return (0, 0);
        var (ax, ay) = (grid.Dots[closest].X - dot.X, grid.Dots[closest].Y - dot.Y);
        var length = Math.Sqrt((ax * ax) + (ay * ay));
        if (length < dpi / MostLpi)
            return (0, 0);
        near[0] = closest;
        double sumX = ax, sumY = ay;
        var found = 1;
        for (var k = 1; k < 4; k++)
        {
            (ax, ay) = (-ay, ax);
            near[k] = grid.Nearest(dot.X + ax, dot.Y + ay, NeighbourTolerance * length, i);
            if (near[k] < 0)
                continue;

            // Turned back by k quarter turns, so that all four add up.
            var (dx, dy) = (grid.Dots[near[k]].X - dot.X, grid.Dots[near[k]].Y - dot.Y);
            var (bx, by) = k switch { 1 => (dy, -dx), 2 => (-dx, -dy), _ => (-dy, dx) };
            (sumX, sumY, found) = (sumX + bx, sumY + by, found + 1);
        }

        return found < 3
            ? (0, 0)
            : ((float)(Math.Sqrt((sumX * sumX) + (sumY * sumY)) / found), (float)Math.Atan2(sumY, sumX));
    }

    /// <summary>Numbers the dots of a group by walking from neighbour to neighbour, and fits.</summary>
    private static DotGroup? Fit(
        DotGrid grid, int[] members, UnionFind sets, (int I, int J)[] sites, int[] near, float[] period, float[] angle)
    {
        double c = 0, s = 0;
        foreach (var m in members)
            (c, s) = (c + Math.Cos(4 * angle[m]), s + Math.Sin(4 * angle[m]));
        var direction = Math.Atan2(s, c) / 4;
        var lengths = Array.ConvertAll(members, m => period[m]);
        Array.Sort(lengths);
        var length = lengths[lengths.Length / 2];
        var local = new ScreenLattice(0, 0, length * Math.Cos(direction), length * Math.Sin(direction));
        var left = members.Length;
        foreach (var start in members)
        {
            if (sites[start] != Nowhere)
                continue;
            var walked = Walk(start);
            if (2 * walked.Count >= left)
                break;

            // A dot at a tip may be nobody's neighbour but its own neighbours', and lead nowhere: then another is begun from.
            foreach (var m in walked)
                sites[m] = LedNowhere;
            left -= walked.Count;
        }

        // Dots with all four neighbours are whole; those at an edge may be cut and off centre.
        var whole = members.Where(m => IsPlaced(sites[m]) && near.AsSpan(4 * m, 4).IndexOf(-1) < 0);
        return whole.Count() < LeastDots / 3
            ? null
            : new DotGroup(ScreenLattice.Fit(whole.Select(m => ((double)sites[m].I, (double)sites[m].J, (double)grid.Dots[m].X, (double)grid.Dots[m].Y))), members);

        List<int> Walk(int start)
        {
            var (walked, group) = (new List<int> { start }, sets.Root(start));
            sites[start] = (0, 0);
            for (var n = 0; n < walked.Count; n++)
            {
                var at = walked[n];
                for (var k = 0; k < 4; k++)
                {
                    var next = near[(4 * at) + k];
                    if (next < 0 || sites[next] != Nowhere || period[next] <= 0 || sets.Root(next) != group)
                        continue;
                    var (i, j) = local.Sites(grid.Dots[next].X - grid.Dots[at].X, grid.Dots[next].Y - grid.Dots[at].Y);
                    sites[next] = (sites[at].I + (int)Math.Round(i), sites[at].J + (int)Math.Round(j));
                    walked.Add(next);
                }
            }

            return walked;
        }
    }

    private static bool IsPlaced((int I, int J) site) => site != Nowhere && site != LedNowhere;
}
