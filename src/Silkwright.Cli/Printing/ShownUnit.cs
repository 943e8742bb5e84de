using Silkwright.Estimates;
using UnitsNet;
using UnitsNet.Units;

namespace Silkwright.Cli.Printing;

/// <summary>The unit a figure is shown in, and the one shown beside it for people who think in inches and ounces.</summary>
/// <param name="Metric">As written after the figure.</param>
/// <param name="Us">As written after the converted figure; none where both worlds use the same.</param>
/// <param name="MetricUnit">For the conversion.</param>
/// <param name="UsUnit">For the conversion.</param>
internal sealed record ShownUnit(string Metric, string? Us = null, Enum? MetricUnit = null, Enum? UsUnit = null)
{
    public static readonly ShownUnit Micrometres = new("µm", "mil", LengthUnit.Micrometer, LengthUnit.Mil);
    public static readonly ShownUnit Millimetres = new("mm", "in", LengthUnit.Millimeter, LengthUnit.Inch);
    public static readonly ShownUnit PerCm = new("/cm", "/in", ReciprocalLengthUnit.InverseCentimeter, ReciprocalLengthUnit.InverseInch);
    public static readonly ShownUnit PerInch = new("/in", "/cm", ReciprocalLengthUnit.InverseInch, ReciprocalLengthUnit.InverseCentimeter);
    public static readonly ShownUnit Celsius = new("°C", "°F", TemperatureUnit.DegreeCelsius, TemperatureUnit.DegreeFahrenheit);
    public static readonly ShownUnit Grams = new("g", "oz", MassUnit.Gram, MassUnit.Ounce);
    public static readonly ShownUnit Kilograms = new("kg", "oz", MassUnit.Kilogram, MassUnit.Ounce);
    public static readonly ShownUnit Pascals = new("Pa", "inHg", PressureUnit.Pascal, PressureUnit.InchOfMercury);
    public static readonly ShownUnit Percent = new("%");
    public static readonly ShownUnit Chance = new("%") { Value = Figures.Chance, Interval = Figures.ChanceInterval };
    public static readonly ShownUnit Seconds = new("s");
    public static readonly ShownUnit Minutes = new("") { Value = Figures.Minutes, Interval = Figures.MinutesInterval };
    public static readonly ShownUnit CubicCmPerM2 = new("cm³/m²");
    public static readonly ShownUnit GramsPerKg = new("g/kg");
    public static readonly ShownUnit KilojoulesPerKg = new("kJ/kg");
    public static readonly ShownUnit Units = new("units");
    public static readonly ShownUnit Impressions = new("imp.");

    /// <summary>How the value of an estimate is said.</summary>
    public Func<Estimate, string> Value { get; init; } = Figures.Value;

    /// <summary>How its interval is said.</summary>
    public Func<Estimate, string> Interval { get; init; } = Figures.Interval;

    /// <summary>An estimate in its own unit, to the digits that its interval carries.</summary>
    public string Write(Estimate estimate) => $"{Value(estimate)} {Metric}".TrimEnd();

    /// <summary>An estimate in the other unit; empty where there is none.</summary>
    public string WriteUs(Estimate estimate) => Us is null ? "" : $"{Value(estimate.Map(ToUs))} {Us}";

    /// <summary>Both, the other in brackets.</summary>
    public string WriteBoth(Estimate estimate) => Us is null ? Write(estimate) : $"{Write(estimate)} ({WriteUs(estimate)})";

    /// <summary>An interval in its own unit; empty for a figure without spread.</summary>
    public string WriteRange(Estimate estimate) => Interval(estimate) is { Length: > 0 } interval ? $"{interval} {Metric}".TrimEnd() : "";

    /// <summary>A figure without an interval, in its own unit.</summary>
    public string Write(double value) => Write(Estimate.Exact(value, Ground.Model));

    /// <inheritdoc cref="Write(double)"/>
    public string WriteUs(double value) => WriteUs(Estimate.Exact(value, Ground.Model));

    /// <inheritdoc cref="Write(double)"/>
    public string WriteBoth(double value) => WriteBoth(Estimate.Exact(value, Ground.Model));

    private double ToUs(double value) => UnitConverter.Convert(value, MetricUnit!, UsUnit!);
}
