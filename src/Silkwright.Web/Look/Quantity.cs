using Silkwright.Estimates;

namespace Silkwright.Web.Look;

/// <summary>An estimate in the unit a person reads, and its unit's sign.</summary>
public sealed record Quantity(Estimate Estimate, string Unit)
{
    /// <summary>Figures of the value.</summary>
    public string Value { get; private init; } = Figures.Value(Estimate);

    /// <summary>Figures of the interval; empty for a number without spread.</summary>
    public string Interval { get; private init; } = Figures.Interval(Estimate);

    /// <summary>A time, in hours and days where those are read more easily.</summary>
    public static Quantity Minutes(Estimate minutes) =>
        new(minutes, "") { Value = Figures.Minutes(minutes), Interval = Figures.MinutesInterval(minutes) };

    /// <summary>A chance in percent.</summary>
    public static Quantity Chance(Estimate percent) =>
        new(percent, "%") { Value = Figures.Chance(percent), Interval = Figures.ChanceInterval(percent) };

    /// <summary>Value and unit: "6.2 µm".</summary>
    public override string ToString() => $"{Value} {Unit}".TrimEnd();
}
