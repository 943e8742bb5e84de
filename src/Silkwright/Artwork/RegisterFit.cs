namespace Silkwright.Artwork;

/// <summary>Lays the register marks of one film on those of another.</summary>
internal static class RegisterFit
{
    /// <summary>The offset of the second film from the first; none where no mark has a fellow.</summary>
    /// <remarks>Shift, turn and stretch by least squares over the marks that agree: docs/engines/film.md, equations 8 and 9.</remarks>
    public static RegisterOffset? Of(IReadOnlyList<RegisterMark> first, IReadOnlyList<RegisterMark> second) =>
        RegisterPairs.Of(first, second) is { Count: > 0 } pairs ? Solve(pairs) : null;

    private static RegisterOffset Solve(IReadOnlyList<(RegisterMark First, RegisterMark Second)> pairs)
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
            pairs.Max(pair => Apart(pair.First, pair.Second)));
    }

    private static double Apart(RegisterMark one, RegisterMark other)
    {
        var (dx, dy) = (other.XMm - one.XMm, other.YMm - one.YMm);
        return Math.Sqrt((dx * dx) + (dy * dy));
    }
}
