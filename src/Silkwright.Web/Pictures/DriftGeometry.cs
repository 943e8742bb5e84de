using Silkwright.Exposure;

namespace Silkwright.Web.Pictures;

/// <summary>What the control chart of a shop's step tests is drawn from.</summary>
public sealed record DriftGeometry
{
    /// <summary>Days named under the chart.</summary>
    private const int MostDated = 7;

    public required PlotArea Area { get; init; }

    /// <summary>Tests held against the level.</summary>
    public required IReadOnlyList<DatedTest> Charted { get; init; }

    /// <summary>Tests whose day is named.</summary>
    public required IReadOnlyList<DatedTest> Dated { get; init; }

    public static DriftGeometry Of(ExposureDrift drift, double left, double top, double width, double height)
    {
        var ends = drift.Tests.Select(EndsOf).SelectMany(end => new[] { end.Low, end.High })
            .Concat(drift.Tests.SelectMany(test => new[] { test.LowPercent ?? 0, test.HighPercent ?? 0 })).ToArray();
        var (first, last) = (drift.Tests[0].On.DayNumber, drift.Tests[^1].On.DayNumber);
        var margin = 1 + (0.03 * (last - first));
        var every = Math.Max(1, (int)Math.Ceiling((double)drift.Tests.Count / MostDated));
        return new DriftGeometry
        {
            Area = new PlotArea(left, top, width, height, first - margin, last + margin, Math.Floor(ends.Min() / 10) * 10, Math.Ceiling(ends.Max() / 10) * 10),
            Charted = [.. drift.Tests.Where(test => test.AveragePercent is not null)],
            Dated = [.. drift.Tests.Reverse().Where((_, i) => i % every == 0)],
        };
    }

    public double X(DateOnly day) => Area.X(day.DayNumber);

    /// <summary>Ends of the test's own interval, off the level. [%]</summary>
    public static (double Low, double High) EndsOf(DatedTest test)
    {
        var level = test.Least.Value / (1 + (test.PercentOff / 100));
        return (100 * ((test.Least.Low / level) - 1), 100 * ((test.Least.High / level) - 1));
    }
}
