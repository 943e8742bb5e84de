using Silkwright.Emulsion;
using Silkwright.Estimates;

namespace Silkwright.Exposure;

/// <summary>The usual exposure drawn towards what a working curve and a radiometer say.</summary>
/// <remarks>
/// Seconds = 1.25 Hc·exp(L/Dp) / E at the stencil the usual exposures speak of: docs/engines/exposure.md, equation 15. Two radiometers differ,
/// and so do laboratories by far (Kolibaba et al. 2024: up to 70 times in Hc), hence a factor of three either way; the two are then
/// weighed by the inverse squares of their spreads.
/// </remarks>
public static class CurveExposure
{
    /// <summary>A factor either way on seconds from a curve of one place and a radiometer of another. Guess, no source. [1]</summary>
    private const double Spread = 3;

    /// <summary>What to expect of an exposure before any test; the usual one where the curve or the lamp's irradiance is not known. [s]</summary>
    /// <param name="usual">The usual exposure for the lamp and the family. [s]</param>
    /// <param name="usualSpread">A factor either way on it. [1], above 1.</param>
    /// <param name="lamp">The lamp.</param>
    /// <param name="emulsion">The emulsion.</param>
    public static Estimate Seconds(Estimate usual, double usualSpread, Lamp lamp, StencilEmulsion emulsion)
    {
        if (lamp.IrradianceMwPerCm2 is not { } irradiance || OfCurve(emulsion) is not { } dose)
            return usual;
        var curve = CoatOptics.GoodOverLeast * dose / irradiance;
        var (usualWeight, curveWeight) = (Weight(usualSpread), Weight(Spread));
        var middle = ((usualWeight * Math.Log(usual.Value)) + (curveWeight * Math.Log(curve))) / (usualWeight + curveWeight);
        return Estimate.WithinFactor(Math.Exp(middle), Math.Exp(1 / Math.Sqrt(usualWeight + curveWeight)), Ground.Model);
    }

    /// <summary>Dose through the reference stencil, of the slower part where a film is laid with emulsion. [mJ/cm²]</summary>
    private static double? OfCurve(StencilEmulsion emulsion)
    {
        var alone = emulsion is { CriticalDoseMjPerCm2: { } critical, PenetrationDepthUm: not null }
            ? critical * Math.Exp(new CoatBleaching(emulsion.WithoutLaying()).Law.LogDose(CoatOptics.ReferenceStencilUm))
            : (double?)null;
        return emulsion.LaidWith is not { } laying ? alone
            : alone is { } film && OfCurve(laying) is { } behind ? Math.Max(film, behind)
            : null;
    }

    private static double Weight(double factor) => 1 / (Math.Log(factor) * Math.Log(factor));
}
