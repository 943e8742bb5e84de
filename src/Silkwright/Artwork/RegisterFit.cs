namespace Silkwright.Artwork;

/// <summary>Lays the register marks of one film on those of another.</summary>
internal static class RegisterFit
{
    /// <summary>Films farther apart than this are not laid over each other. [mm] Our own choice: more than any sheet is put in askew.</summary>
    private const double MostShiftMm = 30;

    /// <summary>How far a mark may lie from where the shift alone puts it. [mm] A turn of 1 degree moves a mark 400 mm away by 7 mm.</summary>
    private const double MostDriftMm = 8;

    /// <summary>The offset of the second film from the first; none where no mark has a fellow.</summary>
    /// <remarks>
    /// The shift that the most marks agree on, then shift, turn and stretch by least squares: docs/engines/film.md, equations 8 and 9.
    /// </remarks>
    public static RegisterOffset? Of(IReadOnlyList<RegisterMark> first, IReadOnlyList<RegisterMark> second)
    {
        List<(RegisterMark First, RegisterMark Second)> best = [];
        var least = double.MaxValue;
        foreach (var one in first)
        {
            foreach (var other in second)
            {
                var (x, y) = (other.XMm - one.XMm, other.YMm - one.YMm);
                if (Math.Sqrt((x * x) + (y * y)) > MostShiftMm)
                    continue;
                var pairs = Pairs(first, second, x, y);
                var apart = pairs.Sum(pair => Apart(pair, x, y)) + (Math.Abs(x) + Math.Abs(y)) / MostShiftMm;
                if (pairs.Count > best.Count || (pairs.Count == best.Count && apart < least))
                    (best, least) = (pairs, apart);
            }
        }

        return best.Count == 0 ? null : Solve(best);
    }

    private static List<(RegisterMark First, RegisterMark Second)> Pairs(IReadOnlyList<RegisterMark> first, IReadOnlyList<RegisterMark> second, double x, double y)
    {
        var pairs = new List<(RegisterMark First, RegisterMark Second)>();
        var free = second.ToList();
        foreach (var one in first)
        {
            if (free.Count > 0 && free.MinBy(other => Apart((one, other), x, y)) is { } nearest && Apart((one, nearest), x, y) <= MostDriftMm)
            {
                pairs.Add((one, nearest));
                _ = free.Remove(nearest);
            }
        }

        return pairs;
    }

    private static RegisterOffset Solve(List<(RegisterMark First, RegisterMark Second)> pairs)
    {
        var (ax, ay) = (pairs.Average(p => p.First.XMm), pairs.Average(p => p.First.YMm));
        var (bx, by) = (pairs.Average(p => p.Second.XMm), pairs.Average(p => p.Second.YMm));
        double along = 0, across = 0, square = 0;
        foreach (var (one, other) in pairs)
        {
            var (x, y, u, v) = (one.XMm - ax, one.YMm - ay, other.XMm - bx, other.YMm - by);
            along += (x * u) + (y * v);
            across += (x * v) - (y * u);
            square += (x * x) + (y * y);
        }

        var known = square > 0;
        return new RegisterOffset(
            bx - ax,
            by - ay,
            // y runs down, so a positive angle here is clockwise.
            known ? (0 - Math.Atan2(across, along)) * 180 / Math.PI : 0,
            known ? 100 * ((Math.Sqrt((along * along) + (across * across)) / square) - 1) : 0,
            pairs.Count,
            pairs.Max(pair => Apart(pair, 0, 0)));
    }

    private static double Apart((RegisterMark First, RegisterMark Second) pair, double x, double y)
    {
        var (dx, dy) = (pair.Second.XMm - pair.First.XMm - x, pair.Second.YMm - pair.First.YMm - y);
        return Math.Sqrt((dx * dx) + (dy * dy));
    }
}
