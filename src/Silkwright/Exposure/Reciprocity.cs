namespace Silkwright.Exposure;

/// <summary>Whether strong light for a short time does what weak light does for a long one.</summary>
/// <remarks>
/// Taken as true throughout: dose is irradiance times time. Known to fail for radical sensitisers at high irradiance (p below 1) and in air, which
/// keeps the surface soft under weak light; by how much in stencils nobody has published. Schwarzschild's exponent says it in one figure.
/// </remarks>
public static class Reciprocity
{
    /// <summary>What a time of light amounts to. [mJ/cm²]</summary>
    /// <param name="irradianceMwPerCm2">[mW/cm²]</param>
    /// <param name="seconds">[s]</param>
    /// <param name="exponent">Schwarzschild's p. [1]; 1 where reciprocity holds.</param>
    public static double DoseMjPerCm2(double irradianceMwPerCm2, double seconds, double exponent = 1) => irradianceMwPerCm2 * Math.Pow(seconds, exponent);

    /// <summary>Time under weaker light over the time under stronger for the same effect. [1]</summary>
    /// <param name="weaker">Stronger irradiance over weaker. [1], above 0.</param>
    /// <param name="exponent">Schwarzschild's p. [1], above 0.</param>
    public static double TimeFactor(double weaker, double exponent = 1) => Math.Pow(weaker, 1 / exponent);
}
