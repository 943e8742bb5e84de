using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Mesh;

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

    /// <summary>Dyed mesh asks this much more exposure than white. [1]</summary>
    private static readonly Estimate DyedOverWhite = new(1.5, 1.3, 2.2, Ground.CommonPractice);

    /// <summary>White threads carry scattered light this much further. [1]</summary>
    private const double WhiteScatter = 1.8;

    /// <summary>
    /// Depth over which the needed exposure grows by e, bleaching included: chosen so that a coat of twice or thrice the
    /// thickness asks about as much more (diazo bleaches), or more than that (photopolymer does not). Of a film and
    /// the emulsion it is laid with, the one that lets light less deep.
    /// </summary>
    internal static Estimate PenetrationUm(StencilEmulsion emulsion)
    {
        var depth = PenetrationAlone(emulsion);
        return emulsion.LaidWith is { } laying && PenetrationAlone(laying) is var behind && behind.Value < depth.Value ? behind : depth;
    }

    private static Estimate PenetrationAlone(StencilEmulsion emulsion)
    {
        if (emulsion.PenetrationDepthUm is { } given)
            return UsualSpread.Around(given, UsualSpread.PenetrationDepth, emulsion.Grounds.PenetrationDepth);
        var depth = emulsion.Family switch
        {
            EmulsionFamily.Diazo => 95.0,
            EmulsionFamily.DualCure or EmulsionFamily.CapillaryFilm => 85,
            EmulsionFamily.Photopolymer => 70,
            _ => throw new ArgumentOutOfRangeException(nameof(emulsion), emulsion.Family, "Unknown family."),
        };
        return Estimate.WithinFactor(depth, 1.5, Ground.CommonPractice);
    }

    /// <summary>
    /// Length over which scattered light falls by e beside an edge: chosen so that an 80 µm line on dyed 120/34 mesh keeps about
    /// the latitude the trade gives each family.
    /// </summary>
    internal static Estimate ScatterUm(EmulsionFamily family, MeshFabric mesh)
    {
        var length = family switch
        {
            EmulsionFamily.Diazo => 5.6,
            EmulsionFamily.DualCure or EmulsionFamily.CapillaryFilm => 6.0,
            EmulsionFamily.Photopolymer => 6.8,
            _ => throw new ArgumentOutOfRangeException(nameof(family), family, "Unknown family."),
        };
        return Estimate.WithinFactor(length * (mesh.Dyed ? 1 : WhiteScatter), 1.35, Ground.CommonPractice);
    }

    /// <summary>Exposure on this mesh over that on the dyed mesh of the usual exposures. [1]</summary>
    internal static Estimate MeshColour(MeshFabric mesh) => mesh.Dyed
        ? Estimate.Exact(1, Ground.CommonPractice)
        : new Estimate(1 / DyedOverWhite.Value, 1 / DyedOverWhite.High, 1 / DyedOverWhite.Low, Ground.CommonPractice);

    /// <summary>Film's image to coat under good vacuum. [µm]</summary>
    internal static readonly Estimate GapUm = new(10, 4, 20, Ground.CommonPractice);

    internal static readonly Estimate DMaxUv = new(3, 2.2, 3.6, Ground.CommonPractice);

    internal static readonly Estimate DMinUv = new(0.07, 0.04, 0.12, Ground.CommonPractice);

    /// <summary>Density of the clear film behind the usual exposures. [1]</summary>
    internal const double ReferenceDMin = 0.05;
}
