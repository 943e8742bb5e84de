using Silkwright.Estimates;
using Silkwright.Light;
using Silkwright.Light.Surface;
using Silkwright.Mesh;

namespace Silkwright.Exposure;

/// <summary>What light does in the stencil of a case, beside the stencil that the usual exposures speak of.</summary>
/// <remarks>
/// Out of the fitted light (<see cref="LightSurface"/>), so that mesh, colour, thickness, lamp and contact are its outcomes. Beyond its range it is told at the nearest place, and dose falls on
/// by absorption alone.
/// </remarks>
internal sealed class StencilLight
{
    /// <summary>The mesh that the usual exposures speak of.</summary>
    private static readonly MeshFabric UsualMesh = new(120, 34, Dyed: true);

    private const double PerCmAndUm = 1e4;

    /// <summary>No stencil is thinner. [µm]</summary>
    private const double LeastStencilUm = 1;

    private readonly SurfacePlace place;
    private readonly SurfacePlace usual;
    private readonly double fabricUm;
    private readonly bool isDyed;
    private readonly Dictionary<(double, CureLaw, double, double, double), LightOutcome> told = [];

    /// <summary>Beyond its range the fit is taken to be out by so many times as much. Guess. [1]</summary>
    private const double OutsideTimes = 2;

    /// <summary>What the fit is out by in the dose behind threads, as a factor.</summary>
    internal static Estimate ThroughError(ExposureCase exposure) => Error(exposure, LightSurface.Usual.ErrorOfThroughWorst);

    /// <summary>The same in the undercut.</summary>
    internal static Estimate UndercutError(ExposureCase exposure) => Error(exposure, LightSurface.Usual.ErrorOfUndercut);

    private static Estimate Error(ExposureCase exposure, double log) =>
        Estimate.WithinFactor(1, Math.Exp(log * (SurfaceRange.Outside(BestPlace(exposure)).Count > 0 ? OutsideTimes : 1)), Ground.Model);

    internal StencilLight(ExposureCase exposure)
    {
        var bare = new SurfacePlace
        {
            ThreadUm = 0,
            Cover = 0,
            ThicknessPerThread = 0,
            PrintSideUm = 0,
            SqueegeeSideUm = UsualOptics.SqueegeeSideUm.Value,
            CoatAbsorptionPerCm = 0,
            CoatScatteringPerCm = 0,
            CoatAnisotropy = UsualOptics.CoatAnisotropy.Value,
            ThreadAbsorptionPerCm = CoatOptics.ThreadAbsorption(dyed: true).Value,
            ThreadScatteringPerCm = UsualOptics.ThreadScattering.Value,
            HalfAngleDegrees = ImagingOptics.HalfAngleDegrees(exposure.Lamp),
            BackingReflectance = UsualOptics.BlackBlanket.Value,
        };
        place = bare.On(exposure.Mesh);
        usual = bare.On(UsualMesh);
        fabricUm = place.ThicknessPerThread * place.ThreadUm;
        usual = usual with { PrintSideUm = CoatOptics.ReferenceStencilUm - (usual.ThicknessPerThread * usual.ThreadUm) };
        isDyed = exposure.Mesh.Dyed;
    }

    /// <summary>The case at its best values, as the fitted light would be asked.</summary>
    internal static SurfacePlace BestPlace(ExposureCase exposure) => new StencilLight(exposure).Place(
        exposure.StencilUm.Value, new CoatBleaching(exposure.Emulsion).Law.LengthUm(exposure.StencilUm.Value), CoatOptics.ScatteringPerCm(exposure.Emulsion.Family).Value,
        CoatOptics.ThreadAbsorption(exposure.Mesh.Dyed).Value, ImagingOptics.GapUm(exposure.Lamp.Imaging).Value);

    /// <summary>The light for one choice of what is uncertain.</summary>
    /// <param name="stencilUm">Mesh and coat over it on the print side. [µm]</param>
    /// <param name="coat">How it takes light: the fitted light is asked with the absorption that, without bleaching, would ask as much through each stencil.</param>
    /// <param name="scatteringPerCm">Of the coat. [1/cm]</param>
    /// <param name="threadsPerCm">Absorption of the case's threads. [1/cm]</param>
    /// <param name="gapUm">Air under the film. [µm]</param>
    internal LightOutcome At(double stencilUm, CureLaw coat, double scatteringPerCm, double threadsPerCm, double gapUm)
    {
        var key = (stencilUm, coat, scatteringPerCm, threadsPerCm, gapUm);
        if (told.TryGetValue(key, out var known))
            return known;
        var here = Place(stencilUm, coat.LengthUm(Math.Max(LeastStencilUm, stencilUm)), scatteringPerCm, threadsPerCm, gapUm);
        var there = usual with { CoatAbsorptionPerCm = PerCmAndUm / coat.LengthUm(CoatOptics.ReferenceStencilUm), CoatScatteringPerCm = scatteringPerCm, GapUm = gapUm };
        if (isDyed)
            there = there with { ThreadAbsorptionPerCm = threadsPerCm };
        var (inside, usualInside) = (SurfaceRange.Inside(here), SurfaceRange.Inside(there));
        var (print, edge) = EdgeOf(inside);
        if (!isDyed)
            (print, edge) = BesideDyed(print, edge, EdgeOf(SurfaceRange.Inside(here with { ThreadAbsorptionPerCm = CoatOptics.ThreadAbsorption(dyed: true).Value })));
        var (through, usualThrough) = (LogThrough(here, coat), LogThrough(there, coat));
        return told[key] = new(usualThrough - through, print - through - LightSurface.Usual.LogPrint(usualInside) + usualThrough, edge);
    }

    private static (double LogPrint, EdgeCurve Edge) EdgeOf(SurfacePlace inside)
    {
        var (print, at35Um, at15Um, at05Um) = LightSurface.Usual.Edge(inside);
        return (print, new EdgeCurve(at35Um, at15Um, at05Um));
    }

    /// <summary>
    /// Clear threads send more light back and farther than dyed ones, never less, whatever the fit is out by. As fitted they carry it so far that no shop would print on coarse white mesh: there the
    /// trade's word is held to instead. docs/engines/exposure.md, "Calibration".
    /// </summary>
    private static (double LogPrint, EdgeCurve Edge) BesideDyed(double logPrint, EdgeCurve white, (double LogPrint, EdgeCurve Edge) dyed) =>
        (Math.Max(logPrint, dyed.LogPrint), white.NoFartherThan(dyed.Edge.Times(CoatOptics.WhiteOverDyedUndercut)).NoNearerThan(dyed.Edge));

    private SurfacePlace Place(double stencilUm, double penetrationUm, double scatteringPerCm, double threadsPerCm, double gapUm) => place with
    {
        PrintSideUm = Math.Max(SurfaceRange.LeastPrintSideUm, stencilUm - fabricUm),
        CoatAbsorptionPerCm = PerCmAndUm / penetrationUm,
        CoatScatteringPerCm = scatteringPerCm,
        ThreadAbsorptionPerCm = threadsPerCm,
        GapUm = gapUm,
    };

    /// <summary>Each thickness is asked with the absorption that is its own, so that a coat that bleaches lets no more light through where it is thicker.</summary>
    private static double LogThrough(SurfacePlace place, CureLaw coat)
    {
        var told = Math.Min(place.PrintSideUm, SurfaceRange.MostPrintSideUm);
        return LightSurface.Usual.LogThroughWorst(told, Of) - Math.Max(0, place.AbsorptionLengths - Of(told).AbsorptionLengths);

        SurfacePlace Of(double printSideUm)
        {
            var stencilUm = (place.ThicknessPerThread * place.ThreadUm) + printSideUm;
            return place with { PrintSideUm = printSideUm, CoatAbsorptionPerCm = PerCmAndUm / coat.LengthUm(Math.Max(LeastStencilUm, stencilUm)) };
        }
    }
}
