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
    public static readonly ShownUnit Pascals = new("Pa", "inHg", PressureUnit.Pascal, PressureUnit.InchOfMercury);
    public static readonly ShownUnit Percent = new("%");
    public static readonly ShownUnit Seconds = new("s");
    public static readonly ShownUnit Minutes = new("min");
    public static readonly ShownUnit CubicCmPerM2 = new("cm³/m²");
    public static readonly ShownUnit GramsPerKg = new("g/kg");
    public static readonly ShownUnit KilojoulesPerKg = new("kJ/kg");
    public static readonly ShownUnit Units = new("units");
    public static readonly ShownUnit Impressions = new("imp.");

    /// <summary>The figure in its own unit.</summary>
    public string Write(double value) => $"{Figures.Of(value)} {Metric}".TrimEnd();

    /// <summary>The figure in the other unit; empty where there is none.</summary>
    public string WriteUs(double value) => Us is null ? "" : $"{Figures.Of(UnitConverter.Convert(value, MetricUnit!, UsUnit!))} {Us}";

    /// <summary>Both, the other in brackets.</summary>
    public string WriteBoth(double value) => Us is null ? Write(value) : $"{Write(value)} ({WriteUs(value)})";

    /// <summary>An interval in its own unit.</summary>
    public string WriteRange(double low, double high) => $"{Figures.Range(low, high)} {Metric}".TrimEnd();
}
