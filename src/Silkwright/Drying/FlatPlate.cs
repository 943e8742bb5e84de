namespace Silkwright.Drying;

/// <summary>Mass and heat transfer from a flat plate in a stream along it.</summary>
/// <remarks>
/// Average over the plate, sharp leading edge. docs/engines/drying.md, equations 9 to 11. Source: Incropera and others,
/// Fundamentals of Heat and Mass Transfer, 7th edition, chapter 7; heat and mass by Chilton and Colburn's analogy.
/// </remarks>
public static class FlatPlate
{
    /// <summary>Reynolds number at which the boundary layer turns turbulent. [1]</summary>
    public const double CriticalReynolds = 5e5;

    /// <param name="reynolds">Stream speed times length over kinematic viscosity. [1], above 0, up to 1e8.</param>
    /// <param name="schmidt">Kinematic viscosity over diffusivity. [1], 0.6 to 50.</param>
    /// <returns>Sherwood number, hm·L/D. [1]</returns>
    public static double Sherwood(double reynolds, double schmidt) => reynolds <= CriticalReynolds
        ? 0.664 * Math.Sqrt(reynolds) * Math.Cbrt(schmidt)
        : ((0.037 * Math.Pow(reynolds, 0.8)) - 871) * Math.Cbrt(schmidt);

    /// <summary>Mass transfer coefficient. [m/s]</summary>
    /// <param name="speedMPerS">Stream speed. [m/s], above 0.</param>
    /// <param name="lengthM">Length along the stream. [m], above 0.</param>
    /// <param name="viscosityM2PerS">Kinematic viscosity of the air. [m²/s]</param>
    /// <param name="diffusivityM2PerS">Water vapour in air. [m²/s]</param>
    public static double MassTransferMPerS(
        double speedMPerS, double lengthM, double viscosityM2PerS, double diffusivityM2PerS) =>
        Sherwood(speedMPerS * lengthM / viscosityM2PerS, viscosityM2PerS / diffusivityM2PerS) * diffusivityM2PerS / lengthM;

    /// <summary>Heat transfer over mass transfer coefficient. [J/(m³·K)]</summary>
    /// <param name="densityKgPerM3">Air density. [kg/m³]</param>
    /// <param name="heatCapacityJPerKgK">Air heat capacity. [J/(kg·K)]</param>
    /// <param name="lewis">Thermal over mass diffusivity. [1]</param>
    public static double HeatOverMass(double densityKgPerM3, double heatCapacityJPerKgK, double lewis) =>
        densityKgPerM3 * heatCapacityJPerKgK * Math.Pow(lewis, 2.0 / 3);
}
