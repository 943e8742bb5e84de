using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Light;

namespace Silkwright.Exposure;

/// <summary>What coat and mesh do with the light, where nobody has measured. Common practice: docs/engines/exposure.md, defaults.</summary>
internal static class CoatOptics
{
    /// <summary>Stencil that the usual exposures speak of: 120/34 mesh with one coat a side. [µm]</summary>
    internal const double ReferenceStencilUm = 57;

    /// <summary>A good exposure over the least that cures through. [1]</summary>
    internal const double GoodOverLeast = 1.25;

    /// <summary>Share of the finest line by which its two edges together may close before it counts as lost. [1]</summary>
    internal const double ClosedShare = 0.3;

    /// <summary>Density between the last solid wedge step and the last trace of coat: five steps. [1]</summary>
    internal const double TraceDensity = 5 * StepWedge.UsualDensityPerStep;

    /// <summary>Density kept in hand beyond that. [1]</summary>
    internal const double DensityMargin = 0.3;

    /// <summary>
    /// Scattering of a coat. [1/cm] Calibrated, once, so that an 80 µm line on the usual stencil keeps the latitude the trade gives each family (docs/engines/exposure.md, "Calibration"); the
    /// spread is what leaves those latitudes within about a third.
    /// </summary>
    internal static Estimate ScatteringPerCm(EmulsionFamily family) => Estimate.WithinFactor(
        family switch
        {
            EmulsionFamily.Diazo or EmulsionFamily.DualCure or EmulsionFamily.CapillaryFilm => 300,
            EmulsionFamily.Photopolymer => 800,
            _ => throw new ArgumentOutOfRangeException(nameof(family), family, "Unknown family."),
        },
        1.3, Ground.CommonPractice);

    /// <summary>
    /// Absorption of the threads. [1/cm] Of dyed ones calibrated, once, so that dyed mesh asks as much more than white as the trade says: docs/engines/exposure.md, "Calibration".
    /// </summary>
    internal static Estimate ThreadAbsorption(bool dyed) => dyed ? new(180, 120, 270, Ground.CommonPractice) : UsualOptics.ThreadAbsorption(dyed: false);

    /// <summary>White threads carry light this much farther under the black than dyed ones, at most. [1] Common practice, no source.</summary>
    internal const double WhiteOverDyedUndercut = 1.8;

    /// <summary>
    /// Air under the film in good vacuum. [µm] The trade reckons 10 µm of film; half as much air throws as long a shadow.
    /// </summary>
    internal static readonly Estimate GapUm = new(5, 2, 10, Ground.CommonPractice);

    internal static readonly Estimate DMaxUv = new(3, 2.2, 3.6, Ground.CommonPractice);

    internal static readonly Estimate DMinUv = new(0.07, 0.04, 0.12, Ground.CommonPractice);

    /// <summary>Density of the clear film behind the usual exposures. [1]</summary>
    internal const double ReferenceDMin = 0.05;
}
