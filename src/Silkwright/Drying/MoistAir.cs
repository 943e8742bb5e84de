namespace Silkwright.Drying;

/// <summary>State of moist air.</summary>
/// <remarks>
/// Saturation over water by Hyland and Wexler's fit, mixing by the ideal-gas relations of the ASHRAE Handbook of
/// Fundamentals (2017), chapter 1: docs/engines/drying.md, equations 1 to 6. Valid from 0 to 60 °C. Dew points and wet
/// bulbs that fall below 0 °C are those over supercooled water, not frost points.
/// </remarks>
public sealed record MoistAir
{
    public const double LeastCelsius = 0;
    public const double MostCelsius = 60;

    /// <summary>Pressure at sea level in the standard atmosphere. [Pa]</summary>
    public const double SeaLevelPa = 101325;

    /// <summary>Range of pressures taken: from about 9000 m up to a deep mine. [Pa]</summary>
    public const double LeastPa = 30000;
    public const double MostPa = 120000;

    private const double KelvinAtZero = 273.15;

    public required double Celsius { get; init; }

    public required double HumidityPercent { get; init; }

    public required double PressurePa { get; init; }

    /// <summary>Where dew begins to form. [°C]; none for air without any vapour.</summary>
    public required double? DewPointCelsius { get; init; }

    /// <summary>Thermodynamic wet bulb: what a freely evaporating surface cools to. [°C]</summary>
    public required double WetBulbCelsius { get; init; }

    /// <summary>Vapour for each kilogram of dry air. [g/kg]</summary>
    public required double HumidityRatioGPerKg { get; init; }

    public required double VapourPressurePa { get; init; }

    public required double SaturationPressurePa { get; init; }

    /// <summary>Above dry air and liquid water at 0 °C, for each kilogram of dry air. [kJ/kg]</summary>
    public required double EnthalpyKjPerKg { get; init; }

    /// <summary>Air and vapour together. [kg/m³]</summary>
    public required double DensityKgPerM3 { get; init; }

    /// <summary>Room that one kilogram of dry air takes with its vapour. [m³/kg]</summary>
    public required double SpecificVolumeM3PerKg { get; init; }

    /// <summary>Air of a temperature and a relative humidity.</summary>
    /// <param name="celsius">Dry bulb. [°C], 0 to 60.</param>
    /// <param name="humidityPercent">Relative humidity over water. [%], 0 to 100.</param>
    /// <param name="pressurePa">Air pressure. [Pa], 30 000 to 120 000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside its range.</exception>
    public static MoistAir At(double celsius, double humidityPercent, double pressurePa = SeaLevelPa)
    {
        Require(celsius, LeastCelsius, MostCelsius, nameof(celsius), "The air temperature", "°C");
        Require(humidityPercent, 0, 100, nameof(humidityPercent), "The relative humidity", "%");
        Require(pressurePa, LeastPa, MostPa, nameof(pressurePa), "The air pressure", "Pa");
        return Of(celsius, humidityPercent / 100 * SaturationPa(celsius), pressurePa);
    }

    /// <summary>Air of a temperature and a thermodynamic wet bulb.</summary>
    /// <param name="celsius">Dry bulb. [°C], 0 to 60.</param>
    /// <param name="wetBulbCelsius">Wet bulb. [°C], 0 up to the dry bulb, and not lower than dry air would read.</param>
    /// <param name="pressurePa">Air pressure. [Pa], 30 000 to 120 000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside its range.</exception>
    public static MoistAir AtWetBulb(double celsius, double wetBulbCelsius, double pressurePa = SeaLevelPa)
    {
        Require(celsius, LeastCelsius, MostCelsius, nameof(celsius), "The air temperature", "°C");
        Require(wetBulbCelsius, LeastCelsius, celsius, nameof(wetBulbCelsius), "The wet bulb", "°C");
        Require(pressurePa, LeastPa, MostPa, nameof(pressurePa), "The air pressure", "Pa");
        var ratio = RatioAtWetBulb(celsius, wetBulbCelsius, pressurePa);
        if (ratio < 0)
        {
            throw new ArgumentOutOfRangeException(
                nameof(wetBulbCelsius), wetBulbCelsius, $"No air of {celsius} °C reads a wet bulb as low as {wetBulbCelsius} °C.");
        }

        return Of(celsius, pressurePa * ratio / (VapourToAirMass + ratio), pressurePa);
    }

    /// <summary>Pressure of the standard atmosphere at a height.</summary>
    /// <param name="altitudeM">Above the sea. [m], -500 to 9000.</param>
    /// <returns>[Pa]; docs/engines/drying.md, equation 6.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The height lies outside its range.</exception>
    public static double PressureAtAltitude(double altitudeM)
    {
        Require(altitudeM, -500, 9000, nameof(altitudeM), "The height above the sea", "m");
        return SeaLevelPa * Math.Pow(1 - (2.25577e-5 * altitudeM), 5.2559);
    }

    /// <summary>Saturation pressure of water vapour over water.</summary>
    /// <param name="celsius">[°C]; the fit holds from 0 to 200 and is carried on below 0 for supercooled water.</param>
    /// <returns>[Pa]; docs/engines/drying.md, equation 1 (Hyland and Wexler 1983, as in the ASHRAE Handbook).</returns>
    public static double SaturationPa(double celsius)
    {
        var kelvin = celsius + KelvinAtZero;
        return Math.Exp(
            (-5.8002206e3 / kelvin) + 1.3914993 - (4.8640239e-2 * kelvin) + (4.1764768e-5 * kelvin * kelvin)
            - (1.4452093e-8 * kelvin * kelvin * kelvin) + (6.5459673 * Math.Log(kelvin)));
    }

    /// <summary>Molar mass of water over that of dry air. [1]</summary>
    private const double VapourToAirMass = 0.621945;

    private static MoistAir Of(double celsius, double vapourPa, double pressurePa)
    {
        var saturationPa = SaturationPa(celsius);
        var ratio = VapourToAirMass * vapourPa / (pressurePa - vapourPa);
        var volume = 287.042 * (celsius + KelvinAtZero) * (1 + (1.607858 * ratio)) / pressurePa;
        return new MoistAir
        {
            Celsius = celsius,
            HumidityPercent = 100 * vapourPa / saturationPa,
            PressurePa = pressurePa,
            DewPointCelsius = vapourPa > 0 ? Root(t => SaturationPa(t) - vapourPa, ColdestSearched, celsius) : null,
            WetBulbCelsius = Root(t => RatioAtWetBulb(celsius, t, pressurePa) - ratio, ColdestSearched, celsius),
            HumidityRatioGPerKg = 1000 * ratio,
            VapourPressurePa = vapourPa,
            SaturationPressurePa = saturationPa,
            EnthalpyKjPerKg = (1.006 * celsius) + (ratio * (2501 + (1.86 * celsius))),
            DensityKgPerM3 = (1 + ratio) / volume,
            SpecificVolumeM3PerKg = volume,
        };
    }

    /// <summary>Humidity ratio of air that reads this wet bulb: the heat balance of adiabatic saturation. [1]</summary>
    private static double RatioAtWetBulb(double celsius, double wetBulb, double pressurePa)
    {
        var saturated = SaturationPa(wetBulb);
        var saturatedRatio = VapourToAirMass * saturated / (pressurePa - saturated);
        return (((2501 - (2.326 * wetBulb)) * saturatedRatio) - (1.006 * (celsius - wetBulb)))
            / (2501 + (1.86 * celsius) - (4.186 * wetBulb));
    }

    /// <summary>Below this no dew point or wet bulb is looked for. [°C]</summary>
    private const double ColdestSearched = -100;

    /// <summary>Root of an increasing function by halving, to far below a thousandth of a degree.</summary>
    private static double Root(Func<double, double> increasing, double low, double high)
    {
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            if (increasing(middle) < 0)
                low = middle;
            else
                high = middle;
        }

        return (low + high) / 2;
    }

    private static void Require(double value, double least, double most, string parameter, string what, string unit)
    {
        if (!(value >= least && value <= most))
            throw new ArgumentOutOfRangeException(parameter, value, $"{what} must lie between {least} and {most} {unit}.");
    }
}
