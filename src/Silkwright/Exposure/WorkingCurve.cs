namespace Silkwright.Exposure;

/// <summary>How deep a coat cures for a dose.</summary>
/// <param name="PenetrationDepthUm">Depth over which the light falls by e. [µm], above 0.</param>
/// <param name="CriticalDoseMjPerCm2">Dose at which the surface just cures. [mJ/cm²], above 0.</param>
/// <remarks>
/// Depth = Dp·ln(E/Ec): docs/engines/exposure.md, equation 1. Source: Jacobs, Rapid Prototyping and Manufacturing (SME 1992).
/// One light, one way of giving the dose, no bleaching: the fitted pair belongs to the lamp it was measured with.
/// </remarks>
public sealed record WorkingCurve(double PenetrationDepthUm, double CriticalDoseMjPerCm2)
{
    /// <param name="doseMjPerCm2">[mJ/cm²], above 0.</param>
    /// <returns>Cured depth. [µm]; 0 where the dose is below the critical one.</returns>
    public double DepthUm(double doseMjPerCm2) =>
        Math.Max(0, PenetrationDepthUm * Math.Log(doseMjPerCm2 / CriticalDoseMjPerCm2));

    /// <param name="depthUm">[µm], 0 or more.</param>
    /// <returns>Dose that cures so deep. [mJ/cm²]</returns>
    public double DoseMjPerCm2(double depthUm) => CriticalDoseMjPerCm2 * Math.Exp(depthUm / PenetrationDepthUm);
}
