namespace Silkwright.Moire;

/// <summary>How well an eye sees a wave of light and dark, by how fine it is.</summary>
public static class EyeSensitivity
{
    /// <summary>Finest wave that a good eye parts. [cycles/degree]; Campbell and Robson 1968, from memory.</summary>
    public const double FinestPerDegree = 60;

    /// <summary>Where <see cref="At"/> is highest. [cycles/degree]; found by halving, its slope is zero there.</summary>
    public const double BestPerDegree = 7.89;

    /// <summary>Sensitivity to a wave, 1 at the eye's best.</summary>
    /// <param name="cyclesPerDegree">[cycles/degree], 0 or more.</param>
    /// <returns>[1], 0 to 1.</returns>
    /// <remarks>
    /// 2.6 (0.0192 + 0.114 f) exp(−(0.114 f)^1.1): docs/engines/moire.md, equation 8. Source: Mannos and Sakrison 1974, from memory.
    /// The best lies near 8 cycles a degree. Day vision, an even field.
    /// </remarks>
    public static double At(double cyclesPerDegree)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(cyclesPerDegree);
        var f = 0.114 * cyclesPerDegree;
        return Math.Min(1, 2.6 * (0.0192 + f) * Math.Exp(-Math.Pow(f, 1.1)));
    }

    /// <summary>A wave on a print, as fine as it looks.</summary>
    /// <param name="perCm">[1/cm]</param>
    /// <param name="viewingMm">From eye to print. [mm]</param>
    /// <returns>[cycles/degree]</returns>
    public static double CyclesPerDegree(double perCm, double viewingMm) => perCm / 10 * viewingMm * Math.PI / 180;
}
