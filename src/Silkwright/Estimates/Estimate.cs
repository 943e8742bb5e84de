namespace Silkwright.Estimates;

/// <summary>A number shown to a person: the value, the interval that should hold it, and its ground.</summary>
/// <remarks>The unit is in the name of the member that holds the estimate (<c>EomUm</c>, <c>Seconds</c>).</remarks>
public sealed record Estimate
{
    /// <summary>The share of cases an interval is meant to hold unless it says otherwise. [%]</summary>
    public const double UsualCoverPercent = 90;

    /// <summary>Half width of such an interval about a normal, in standard deviations.</summary>
    public const double UsualHalfWidth = 1.6449;

    /// <param name="value">Best single value; finite.</param>
    /// <param name="low">Lower end; finite, at most <paramref name="value"/>.</param>
    /// <param name="high">Upper end; finite, at least <paramref name="value"/>.</param>
    /// <param name="ground">Where it comes from.</param>
    /// <param name="coverPercent">Share of cases the interval is meant to hold. [%], 0 to 100.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is not finite or the interval does not hold the value.</exception>
    public Estimate(double value, double low, double high, Ground ground, double coverPercent = UsualCoverPercent)
    {
        if (!double.IsFinite(value) || !double.IsFinite(low) || !double.IsFinite(high))
            throw new ArgumentOutOfRangeException(nameof(value), $"An estimate must be finite: {low} .. {value} .. {high}.");
        if (low > value || value > high)
            throw new ArgumentOutOfRangeException(nameof(value), $"The interval {low} .. {high} does not hold {value}.");
        Value = value;
        Low = low;
        High = high;
        Ground = ground;
        CoverPercent = coverPercent;
    }

    public double Value { get; }

    public double Low { get; }

    public double High { get; }

    public double CoverPercent { get; }

    public Ground Ground { get; }

    /// <summary>A number known without spread: a definition, or one that is exact for the purpose.</summary>
    public static Estimate Exact(double value, Ground ground) => new(value, value, value, ground, 100);

    /// <summary>Value within plus or minus a share of itself.</summary>
    /// <param name="share">Half width as a share of the value. [1], 0 or more.</param>
    public static Estimate Within(double value, double share, Ground ground)
    {
        var half = Math.Abs(value) * share;
        return new(value, value - half, value + half, ground);
    }

    /// <summary>Value within a factor either way.</summary>
    /// <param name="factor">High over value and value over low. [1], 1 or more.</param>
    public static Estimate WithinFactor(double value, double factor, Ground ground) =>
        new(value, value / factor, value * factor, ground);

    /// <summary>The same estimate through an increasing map: a change of unit, a clamp, a power.</summary>
    public Estimate Map(Func<double, double> increasing) =>
        new(increasing(Value), increasing(Low), increasing(High), Ground, CoverPercent);

    /// <summary>The same estimate times an exact factor of any sign but zero.</summary>
    public Estimate Times(double factor) => factor >= 0
        ? Map(x => x * factor)
        : new(Value * factor, High * factor, Low * factor, Ground, CoverPercent);
}
