using System.Globalization;
using Silkwright.Estimates;
using Silkwright.Mesh;

namespace Silkwright.Web.Look;

/// <summary>Stored units to the units a person reads.</summary>
public static class Units
{
    /// <summary>One thousandth of an inch. [µm]; exact by definition of the inch (25.4 mm)</summary>
    public const double UmPerMil = 25.4;

    /// <summary>Avoirdupois ounce. [g]; exact by definition of the pound (0.45359237 kg)</summary>
    public const double GPerOunce = 28.349523125;

    public static UnitSystem Other(UnitSystem system) => system == UnitSystem.Metric ? UnitSystem.Us : UnitSystem.Metric;

    public static Quantity Length(Estimate um, UnitSystem system) =>
        system == UnitSystem.Metric ? new(um, "µm") : new(um.Times(1 / UmPerMil), "mil");

    public static string Length(double um, UnitSystem system) => system == UnitSystem.Metric
        ? $"{Figures.Plain(um, um < 20 ? 1 : 0)} µm"
        : $"{Figures.Plain(um / UmPerMil, um < 254 ? 2 : 1)} mil";

    /// <summary>A length in both: "49 µm (1.94 mil)".</summary>
    public static string BothLengths(double um, UnitSystem system) => $"{OneLength(um, system)} ({OneLength(um, Other(system))})";

    /// <summary>From a millimetre on nobody reads micrometres.</summary>
    private static string OneLength(double um, UnitSystem system) => um < 1000 ? Length(um, system)
        : system == UnitSystem.Metric ? $"{Figures.Plain(um / 1000, 2)} mm"
        : $"{Figures.Plain(um / 25_400, 3)} in";

    public static string Count(double perCm, UnitSystem system) =>
        system == UnitSystem.Metric ? Figures.Plain(perCm, 0) : Figures.Plain(perCm * 2.54, 0);

    public static string CountUnit(UnitSystem system) => system == UnitSystem.Metric ? "/cm" : "/in";

    public static Quantity Mass(Estimate grams, UnitSystem system) => system == UnitSystem.Us
        ? new(grams.Times(1 / GPerOunce), "oz")
        : grams.Value >= 1000 ? new(grams.Times(0.001), "kg") : new(grams, "g");

    public static string Temperature(double celsius, UnitSystem system) => system == UnitSystem.Metric
        ? $"{Figures.Plain(celsius, 0)} °C"
        : $"{Figures.Plain((celsius * 1.8) + 32, 0)} °F";

    public static string Size(double mm, UnitSystem system) =>
        system == UnitSystem.Metric ? $"{Figures.Plain(mm, 0)} mm" : $"{Figures.Plain(mm / 25.4)} in";

    /// <summary>How far from an edge a spot lies, to a hundredth of a millimetre or a thousandth of an inch.</summary>
    public static string Spot(double mm, UnitSystem system) => $"{SizeNumber(mm, system)} {SizeUnit(system)}";

    /// <summary>The same without its unit, as a form takes it back.</summary>
    public static string SizeNumber(double mm, UnitSystem system) => system == UnitSystem.Metric
        ? mm.ToString("0.00", CultureInfo.InvariantCulture)
        : (mm / 25.4).ToString("0.000", CultureInfo.InvariantCulture);

    /// <summary>The unit of sizes.</summary>
    public static string SizeUnit(UnitSystem system) => system == UnitSystem.Metric ? "mm" : "in";

    /// <summary>A height above the sea; the foot is 0.3048 m by definition.</summary>
    public static string Height(double m, UnitSystem system) =>
        system == UnitSystem.Metric ? $"{Figures.Plain(m, 0)} m" : $"{Figures.Plain(m / 0.3048, 0)} ft";

    /// <summary>A mesh as it is asked for: "120/34" or "305/34".</summary>
    public static string Mesh(MeshFabric mesh, UnitSystem system) => $"{Count(mesh.CountPerCm, system)}/{Figures.Plain(mesh.ThreadUm, 0)}";
}
