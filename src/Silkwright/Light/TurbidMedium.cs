namespace Silkwright.Light;

/// <summary>What light meets within a coat or a thread.</summary>
/// <param name="RefractiveIndex">[1], 1 to 3.</param>
/// <param name="AbsorptionPerCm">Absorption coefficient. [1/cm], 0 or more.</param>
/// <param name="ScatteringPerCm">Scattering coefficient. [1/cm], 0 or more.</param>
/// <param name="Anisotropy">Mean cosine of the scattering angle, of Henyey and Greenstein's law. [1], above −1 and below 1.</param>
public sealed record TurbidMedium(double RefractiveIndex, double AbsorptionPerCm, double ScatteringPerCm, double Anisotropy)
{
    /// <summary>Absorption and scattering together. [1/cm]</summary>
    public double ExtinctionPerCm => AbsorptionPerCm + ScatteringPerCm;
}
