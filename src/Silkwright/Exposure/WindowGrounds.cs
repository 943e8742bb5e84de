using Silkwright.Estimates;

namespace Silkwright.Exposure;

/// <summary>On what the two ends of a window rest.</summary>
internal sealed record WindowGrounds(Ground Least, Ground Most)
{
    /// <summary>An end is measured here once a strip has spoken of it; until then it is the trade's order of magnitude.</summary>
    internal static WindowGrounds Of(IReadOnlyList<StepTest> strips)
    {
        var cure = strips.Any(strip => strip.SolidStep is not null || strip.SqueegeeSideSoft is not null || strip.FinestGapUm is not null);
        var line = strips.Any(strip => strip.FinestLineUm is not null);
        return new WindowGrounds(
            cure ? Ground.MeasuredHere : Ground.CommonPractice,
            line ? Ground.MeasuredHere : cure ? Ground.Model : Ground.CommonPractice);
    }
}
