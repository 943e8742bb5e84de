using Silkwright.Estimates;

namespace Silkwright.Web.Look;

/// <summary>An estimate in the unit a person reads, and its unit's sign.</summary>
public sealed record Quantity(Estimate Estimate, string Unit)
{
    public string Value => Figures.Value(Estimate);

    public string Interval => Figures.Interval(Estimate);

    /// <summary>Value and unit: "6.2 µm".</summary>
    public override string ToString() => $"{Value} {Unit}";
}
