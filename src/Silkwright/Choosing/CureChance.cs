using MathNet.Numerics.Distributions;
using Silkwright.Exposure;

namespace Silkwright.Choosing;

/// <summary>How likely an exposure at the aim is good, when doses scatter from day to day.</summary>
public static class CureChance
{
    /// <summary>Chance that the dose lands at or above the least one when it is aimed at the middle of the window.</summary>
    /// <param name="latitudeStops">log2 of most over least; negative when no time works.</param>
    /// <returns>0 to 1, rising with latitude; 0.5 at no latitude.</returns>
    /// <remarks>Normal scatter on the log of dose, aim at the geometric middle: Φ(½ ln 2 · stops / scatter).</remarks>
    public static double WellCured(double latitudeStops) =>
        Normal.CDF(0, Forgiveness.DailyDoseScatter, 0.5 * Math.Log(2) * latitudeStops);
}
