using UnitsNet.Units;

namespace Silkwright.Contracts;

/// <summary>A kind of quantity that is typed as text: which units it takes and in which one the program keeps it.</summary>
public sealed class QuantityKind
{
    /// <summary>A number of things: takes no unit.</summary>
    public static readonly QuantityKind Number = new("a number", "5", "");

    /// <summary>Mesh count, ruling, knit: so many per length. Kept as 1/cm.</summary>
    public static readonly QuantityKind PerLength = new(
        "a count per length", "61/cm", "/cm",
        new QuantityUnit("/cm", ReciprocalLengthUnit.InverseCentimeter, "tpcm", "lpcm"),
        new QuantityUnit("/in", ReciprocalLengthUnit.InverseInch, "/inch", "tpi", "lpi"));

    /// <summary>Threads, stencils, ink films. Kept in micrometres.</summary>
    public static readonly QuantityKind Thickness = new(
        "a thickness", "64um", "um",
        new QuantityUnit("um", LengthUnit.Micrometer, "micron", "microns"),
        new QuantityUnit("mm", LengthUnit.Millimeter),
        new QuantityUnit("mil", LengthUnit.Mil, "mils", "thou"),
        new QuantityUnit("in", LengthUnit.Inch, "inch"));

    /// <summary>Frames and films. Kept in millimetres.</summary>
    public static readonly QuantityKind Length = new(
        "a length", "580mm", "mm",
        new QuantityUnit("mm", LengthUnit.Millimeter),
        new QuantityUnit("cm", LengthUnit.Centimeter),
        new QuantityUnit("in", LengthUnit.Inch, "inch"));

    /// <summary>Height above the sea. Kept in metres.</summary>
    public static readonly QuantityKind Height = new(
        "a height", "300m", "m",
        new QuantityUnit("m", LengthUnit.Meter),
        new QuantityUnit("ft", LengthUnit.Foot, "feet"));

    /// <summary>Films and prints. Kept in square centimetres.</summary>
    public static readonly QuantityKind Area = new(
        "an area", "900cm2", "cm2",
        new QuantityUnit("cm2", AreaUnit.SquareCentimeter, "sqcm"),
        new QuantityUnit("m2", AreaUnit.SquareMeter, "sqm"),
        new QuantityUnit("in2", AreaUnit.SquareInch, "sqin"));

    /// <summary>Temperature of air, stores and screens. Kept in degrees Celsius.</summary>
    public static readonly QuantityKind Temperature = new(
        "a temperature", "25C", "C",
        new QuantityUnit("C", TemperatureUnit.DegreeCelsius, "degC"),
        new QuantityUnit("F", TemperatureUnit.DegreeFahrenheit, "degF"));

    /// <summary>Exposures and waits. Kept in seconds.</summary>
    public static readonly QuantityKind Time = new(
        "a time", "90s", "s",
        new QuantityUnit("s", DurationUnit.Second, "sec"),
        new QuantityUnit("min", DurationUnit.Minute),
        new QuantityUnit("h", DurationUnit.Hour, "hr"));

    /// <summary>Humidity, coverage, solids. Kept in percent.</summary>
    public static readonly QuantityKind Share = new(
        "a share", "50%", "%",
        new QuantityUnit("%", RatioUnit.Percent, "percent"));

    /// <summary>Pressure of the air. Kept in pascals.</summary>
    public static readonly QuantityKind Pressure = new(
        "a pressure", "101325Pa", "Pa",
        new QuantityUnit("Pa", PressureUnit.Pascal),
        new QuantityUnit("hPa", PressureUnit.Hectopascal, "mbar"),
        new QuantityUnit("kPa", PressureUnit.Kilopascal),
        new QuantityUnit("inHg", PressureUnit.InchOfMercury));

    /// <summary>Air along a screen. Kept in metres a second.</summary>
    public static readonly QuantityKind Speed = new(
        "a speed", "0.5m/s", "m/s",
        new QuantityUnit("m/s", SpeedUnit.MeterPerSecond),
        new QuantityUnit("ft/min", SpeedUnit.FootPerMinute, "fpm"));

    /// <summary>Density of an ink or an emulsion. Kept in grams a cubic centimetre.</summary>
    public static readonly QuantityKind Density = new(
        "a density", "1.2g/cm3", "g/cm3",
        new QuantityUnit("g/cm3", DensityUnit.GramPerCubicCentimeter, "g/ml", "kg/l"),
        new QuantityUnit("kg/m3", DensityUnit.KilogramPerCubicMeter),
        new QuantityUnit("lb/gal", DensityUnit.PoundPerUSGallon, "ppg"));

    /// <summary>Angle of a halftone or a mesh. Kept in degrees.</summary>
    public static readonly QuantityKind Angle = new(
        "an angle", "22.5deg", "deg",
        new QuantityUnit("deg", AngleUnit.Degree, "degrees"));

    /// <summary>Tension of a mesh. Kept in newtons a centimetre.</summary>
    public static readonly QuantityKind Tension = new(
        "a tension", "25N/cm", "N/cm",
        new QuantityUnit("N/cm", ForcePerLengthUnit.NewtonPerCentimeter));

    /// <summary>Viscosity of an emulsion. Kept in pascal seconds.</summary>
    public static readonly QuantityKind Viscosity = new(
        "a viscosity", "4.6Pas", "Pas",
        new QuantityUnit("Pas", DynamicViscosityUnit.PascalSecond),
        new QuantityUnit("mPas", DynamicViscosityUnit.MillipascalSecond, "cP"));

    /// <summary>Light on an area. Kept in millijoules a square centimetre.</summary>
    public static readonly QuantityKind Dose = new(
        "a dose", "55mJ/cm2", "mJ/cm2",
        new QuantityUnit("mJ/cm2", IrradiationUnit.MillijoulePerSquareCentimeter),
        new QuantityUnit("J/m2", IrradiationUnit.JoulePerSquareMeter));

    /// <summary>Colour of light. Kept in nanometres.</summary>
    public static readonly QuantityKind Wavelength = new(
        "a wavelength", "420nm", "nm",
        new QuantityUnit("nm", LengthUnit.Nanometer));

    /// <summary>How long something keeps. Kept in days.</summary>
    public static readonly QuantityKind Days = new(
        "a number of days", "35d", "d",
        new QuantityUnit("d", DurationUnit.Day, "day", "days"),
        new QuantityUnit("weeks", DurationUnit.Week, "week", "wk"),
        new QuantityUnit("h", DurationUnit.Hour, "hours"));

    /// <summary>What a container holds. Kept in grams.</summary>
    public static readonly QuantityKind Mass = new(
        "a mass", "900g", "g",
        new QuantityUnit("g", MassUnit.Gram),
        new QuantityUnit("kg", MassUnit.Kilogram),
        new QuantityUnit("oz", MassUnit.Ounce),
        new QuantityUnit("lb", MassUnit.Pound));

    private QuantityKind(string name, string example, string keptIn, params QuantityUnit[] units)
    {
        Name = name;
        Example = example;
        KeptIn = keptIn;
        Units = units;
    }

    /// <summary>The same, told with another example.</summary>
    internal QuantityKind WithExample(string example) => new(Name, example, KeptIn, [.. Units]);

    /// <summary>With its article: "a thickness".</summary>
    public string Name { get; }

    /// <summary>One right way to write it.</summary>
    public string Example { get; }

    /// <summary>The unit values come back in, as people write it; empty for plain numbers.</summary>
    public string KeptIn { get; }

    /// <summary>The units taken, the kept one first.</summary>
    public IReadOnlyList<QuantityUnit> Units { get; }

    /// <summary>The units taken, for people.</summary>
    public string UnitsTaken => Units.Count == 0 ? "no unit" : string.Join(", ", Units.Select(unit => unit.Spelling));
}
