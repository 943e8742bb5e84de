using Silkwright.Estimates;

namespace Silkwright.Exposure;

/// <summary>One day's step test, read by itself.</summary>
/// <param name="On">The day.</param>
/// <param name="Least">Least amount that cured through, on today's lamp and the case's coat.</param>
/// <param name="PercentOff">Off the level of the first tests. [%]; above 0 where more light was needed.</param>
/// <param name="AveragePercent">Weighted average of that up to here; none while the level is being set. [%]</param>
/// <param name="LowPercent">Lower control limit of the average. [%]</param>
/// <param name="HighPercent">Upper control limit. [%]</param>
public sealed record DatedTest(DateOnly On, Estimate Least, double PercentOff, double? AveragePercent, double? LowPercent, double? HighPercent)
{
    /// <summary>The average has left its limits.</summary>
    public bool IsOut => AveragePercent < LowPercent || AveragePercent > HighPercent;
}
