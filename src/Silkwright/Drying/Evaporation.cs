namespace Silkwright.Drying;

/// <summary>Water leaving a wet surface into air that passes along it.</summary>
public static class Evaporation
{
    private const double VapourGasConstant = 461.5;
    private const double KelvinAtZero = 273.15;

    /// <summary>Rate of evaporation from one wet face at the wet bulb.</summary>
    /// <param name="air">The air that passes.</param>
    /// <param name="speedMPerS">Its speed. [m/s], above 0.</param>
    /// <param name="lengthM">Length of the face along it. [m], above 0.</param>
    /// <returns>
    /// [kg/(m²·s)], 0 in saturated air: docs/engines/drying.md, equation 7. The face gains heat from the air alone; light and
    /// warm walls make it faster.
    /// </returns>
    public static double KgPerM2S(MoistAir air, double speedMPerS, double lengthM)
    {
        var filmKelvin = ((air.Celsius + air.WetBulbCelsius) / 2) + KelvinAtZero;
        var vapour = (MoistAir.SaturationPa(air.WetBulbCelsius) - air.VapourPressurePa) / (VapourGasConstant * filmKelvin);
        var transfer = FlatPlate.MassTransferMPerS(
            speedMPerS, lengthM, ViscosityM2PerS(air), DiffusivityM2PerS(air.Celsius, air.PressurePa));
        return Math.Max(0, transfer * vapour);
    }

    /// <summary>Kinematic viscosity by Sutherland's law. [m²/s]. Constants from memory (White, Viscous Fluid Flow).</summary>
    private static double ViscosityM2PerS(MoistAir air)
    {
        var kelvin = air.Celsius + KelvinAtZero;
        var dynamic = 1.716e-5 * Math.Pow(kelvin / 273.15, 1.5) * (273.15 + 110.4) / (kelvin + 110.4);
        return dynamic / air.DensityKgPerM3;
    }

    /// <summary>
    /// Water vapour in air. [m²/s]: 0.26e-4 at 298 K and 1 atm (Incropera and others, 7th edition, table A.8, from memory),
    /// with the 1.75th power of temperature (Fuller and others 1966, from memory) over pressure.
    /// </summary>
    private static double DiffusivityM2PerS(double celsius, double pressurePa) =>
        0.26e-4 * Math.Pow((celsius + KelvinAtZero) / 298, 1.75) * MoistAir.SeaLevelPa / pressurePa;
}
