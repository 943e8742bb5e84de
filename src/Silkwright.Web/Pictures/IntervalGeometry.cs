using Silkwright.Estimates;

namespace Silkwright.Web.Pictures;

/// <summary>An interval and its best value along a line, 0 to 1 from left to right.</summary>
public sealed record IntervalGeometry(double Low, double Value, double High)
{
    /// <summary>How much of the line an interval takes when nothing else sets the scale.</summary>
    private const double Share = 0.6;

    /// <summary>Along a line from <paramref name="from"/> to <paramref name="to"/>.</summary>
    public static IntervalGeometry Along(Estimate estimate, double from, double to) =>
        new(Part(estimate.Low, from, to), Part(estimate.Value, from, to), Part(estimate.High, from, to));

    /// <summary>Along a line from zero, long enough to show what share of the value is in doubt.</summary>
    public static IntervalGeometry FromZero(Estimate estimate) => Along(estimate, 0, Math.Max(estimate.High, double.Epsilon) / (Share + 0.3));

    private static double Part(double x, double from, double to) => to <= from ? 0 : Math.Clamp((x - from) / (to - from), 0, 1);
}
