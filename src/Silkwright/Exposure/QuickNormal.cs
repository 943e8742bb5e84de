using MathNet.Numerics.Distributions;

namespace Silkwright.Exposure;

/// <summary>The standard normal's distribution from a table: good to 1e-6, and looked up where strips are weighed by the hundred thousand.</summary>
internal static class QuickNormal
{
    private const double Reach = 8;
    private const int PerUnit = 256;

    private static readonly double[] Table = [.. Enumerable.Range(0, (int)(2 * Reach * PerUnit) + 2).Select(i => Normal.CDF(0, 1, ((double)i / PerUnit) - Reach))];

    internal static double Below(double deviations)
    {
        var place = (Math.Clamp(deviations, -Reach, Reach) + Reach) * PerUnit;
        var below = (int)place;
        return Table[below] + ((place - below) * (Table[below + 1] - Table[below]));
    }
}
