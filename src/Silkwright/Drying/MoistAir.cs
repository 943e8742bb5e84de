namespace Silkwright.Drying;

/// <summary>State of moist air.</summary>
public sealed record MoistAir
{
    public required double Celsius { get; init; }

    public required double HumidityPercent { get; init; }

    public required double PressurePa { get; init; }

    public required double DewPointCelsius { get; init; }

    public required double WetBulbCelsius { get; init; }

    public required double HumidityRatioGPerKg { get; init; }

    public required double VapourPressurePa { get; init; }

    public required double SaturationPressurePa { get; init; }

    public required double EnthalpyKjPerKg { get; init; }

    public static MoistAir At(double celsius, double humidityPercent, double pressurePa = 101325) => throw new NotImplementedException();

    public static double PressureAtAltitude(double altitudeM) => throw new NotImplementedException();
}
