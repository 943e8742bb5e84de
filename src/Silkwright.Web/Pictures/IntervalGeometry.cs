using Silkwright.Estimates;

namespace Silkwright.Web.Pictures;

/// <summary>An interval and its best value along a line, 0 to 1 from left to right.</summary>
public sealed record IntervalGeometry(double Low, double Value, double High)
{
    /// <summary>The line ends this many times beyond the best value; an interval that reaches further is cut at its end.</summary>
    private const double MostTimesValue = 2.6;

    /// <summary>Room right of an interval that fits. [1]</summary>
    private const double Beyond = 1.1;

    /// <summary>Along a line from <paramref name="from"/> to <paramref name="to"/>.</summary>
    public static IntervalGeometry Along(Estimate estimate, double from, double to) =>
        new(Part(estimate.Low, from, to), Part(estimate.Value, from, to), Part(estimate.High, from, to));

    /// <summary>Along a line from zero, so that the interval's width is seen beside the value itself.</summary>
    public static IntervalGeometry FromZero(Estimate estimate)
    {
        var to = Beyond * estimate.High;
        return Along(estimate, 0, estimate.Value > 0 ? Math.Min(to, MostTimesValue * estimate.Value) : to);
    }

    private static double Part(double x, double from, double to) => to <= from ? 0 : Math.Clamp((x - from) / (to - from), 0, 1);
}
