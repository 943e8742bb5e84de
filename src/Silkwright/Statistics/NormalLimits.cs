using MathNet.Numerics.Distributions;
using MathNet.Numerics.Integration;

namespace Silkwright.Statistics;

/// <summary>Two limits that are known as a pair of normal values: how likely a value lies above the one and below the other, and where it does most likely.</summary>
/// <param name="Low">The lower limit's mean.</param>
/// <param name="High">The upper limit's mean.</param>
/// <param name="LowVariance">Above 0.</param>
/// <param name="HighVariance">Above 0.</param>
/// <param name="Covariance">Of the two; its square at most the product of the variances.</param>
/// <remarks>
/// The chance is summed over how far the limits lie apart, given which the lower is normal again. Its slope has a closed form and changes sign once: a normal density over the convex set
/// low ≤ x ≤ high has a log-concave integral (Prékopa, Acta Sci. Math. 34 (1973) 335; from memory).
/// </remarks>
public sealed record NormalLimits(double Low, double High, double LowVariance, double HighVariance, double Covariance)
{
    /// <summary>Deviations to each side that are summed over.</summary>
    private const double Reach = 8;
    private const int NodesPerPanel = 20;
    private const int MostPanels = 64;
    private const int Halvings = 60;

    /// <summary>A deviation that is none. [of the limits' own unit]</summary>
    private const double Nothing = 1e-12;

    private double ApartVariance => Math.Max(0, LowVariance + HighVariance - (2 * Covariance));

    /// <summary>Chance that the lower limit lies below a value and the upper above it. 0 to 1.</summary>
    public double ChanceBetween(double value)
    {
        var (apart, deviation) = (High - Low, Math.Sqrt(ApartVariance));
        if (deviation <= Nothing)
            return Math.Max(0, Normal.CDF(Low, Math.Sqrt(LowVariance), value) - Normal.CDF(Low + apart, Math.Sqrt(LowVariance), value));
        var slope = (Covariance - LowVariance) / ApartVariance;
        var beside = Math.Max(Nothing, Math.Sqrt(Math.Max(0, LowVariance - (slope * slope * ApartVariance))));
        var (from, to) = (Math.Max(0, apart - (Reach * deviation)), apart + (Reach * deviation));
        if (to <= from)
            return 0;
        var panels = Math.Clamp((int)Math.Ceiling((to - from) / Math.Min(deviation, beside)), 1, MostPanels);
        var panel = (to - from) / panels;
        return Enumerable.Range(0, panels).Sum(i => GaussLegendreRule.Integrate(At, from + (i * panel), from + ((i + 1) * panel), NodesPerPanel));

        double At(double width)
        {
            var over = value - Low - (slope * (width - apart));
            return Normal.PDF(apart, deviation, width) * (Normal.CDF(0, beside, over) - Normal.CDF(0, beside, over - width));
        }
    }

    /// <summary>The value between two others that most likely lies between the limits.</summary>
    public double Best(double from, double to)
    {
        if (Slope(from) <= 0)
            return from;
        if (Slope(to) >= 0)
            return to;
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (from + to) / 2;
            (from, to) = Slope(middle) > 0 ? (middle, to) : (from, middle);
        }

        return (from + to) / 2;
    }

    /// <summary>What the chance gains where the lower limit is just passed, less what it loses where the upper is.</summary>
    private double Slope(double value) =>
        (Normal.PDF(Low, Math.Sqrt(LowVariance), value) * (1 - Given(value, Low, LowVariance, High, HighVariance)))
        - (Normal.PDF(High, Math.Sqrt(HighVariance), value) * Given(value, High, HighVariance, Low, LowVariance));

    /// <summary>Chance that the other limit lies below a value that is the one limit's own.</summary>
    private double Given(double value, double one, double oneVariance, double other, double otherVariance)
    {
        var slope = Covariance / oneVariance;
        var deviation = Math.Sqrt(Math.Max(0, otherVariance - (slope * Covariance)));
        return Normal.CDF(other + (slope * (value - one)), Math.Max(Nothing, deviation), value);
    }
}
