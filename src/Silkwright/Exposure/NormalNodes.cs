namespace Silkwright.Exposure;

/// <summary>A normal distribution about 0 as a few places with their shares.</summary>
internal static class NormalNodes
{
    /// <summary>Even steps of three quarters of the deviation sum smooth functions to better than 1e-4. [deviations]</summary>
    private const double Step = 0.75;
    private const double Reach = 3;

    /// <param name="deviation">0 or more.</param>
    /// <param name="finest">No steps longer than this, whatever the deviation.</param>
    internal static IReadOnlyList<(double At, double Share)> Of(double deviation, double finest)
    {
        if (deviation <= 0)
            return [(0, 1)];
        var half = (int)Math.Ceiling(Reach / Math.Min(Step, finest / deviation));
        var nodes = Enumerable.Range(-half, (2 * half) + 1).Select(i => (double)i * Reach / half).ToArray();
        var sum = nodes.Sum(node => Math.Exp(-node * node / 2));
        return [.. nodes.Select(node => (node * deviation, Math.Exp(-node * node / 2) / sum))];
    }
}
