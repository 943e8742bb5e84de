using Silkwright.Estimates;

namespace Silkwright.Exposure;

/// <summary>The uncertain figures behind one exposure window, in a fixed order, and what follows from a choice of them.</summary>
/// <remarks>All in natural logarithms of exposure: docs/engines/exposure.md, equations 8 to 12.</remarks>
internal sealed class WindowInputs
{
    private const int Speed = 0, Stencil = 1, Penetration = 2, Scattering = 3, Threads = 4, Gap = 5, DMin = 6, DMax = 7, Ageing = 8, Spectrum = 9, FitThrough = 10, FitEdge = 11, Blur = 12, Bleaching = 13, CuringOverBleaching = 14;

    private readonly ExposureCase exposure;
    private readonly double lineUm;
    private readonly double logDistance;
    private readonly StencilLight light;
    private readonly CoatBleaching coat;

    internal WindowInputs(ExposureCase exposure, Estimate speed)
    {
        this.exposure = exposure;
        lineUm = NeededLineUm(exposure);
        logDistance = LogDistance(exposure.Lamp);
        light = new StencilLight(exposure);
        coat = new CoatBleaching(exposure.Emulsion);
        Uncertain =
        [
            new("speed of lamp and emulsion", speed),
            new("stencil thickness", exposure.StencilUm),
            new("how deep the coat lets light", coat.LengthUm),
            new("scatter in the coat", CoatOptics.ScatteringPerCm(exposure.Emulsion.Family)),
            new("light that the threads swallow", CoatOptics.ThreadAbsorption(exposure.Mesh.Dyed)),
            new("contact of film and coat", ImagingOptics.GapUm(exposure.Lamp.Imaging)),
            new("density of the film's clear", Known(exposure.Film?.DMinUv) ?? ImagingOptics.DMinUv(exposure.Lamp.Imaging)),
            new("density of the film's black", Known(exposure.Film?.DMaxUv) ?? ImagingOptics.DMaxUv(exposure.Lamp.Imaging)),
            new("age of the lamp", UsualExposure.Ageing(exposure.Lamp)),
            new("how the coat answers to the light of the lamp", LampSpectrum.Factor(exposure.Lamp, exposure.Emulsion)),
            new("how well the fitted light tells the dose behind threads", StencilLight.ThroughError(exposure)),
            new("how well the fitted light tells the undercut", StencilLight.UndercutError(exposure)),
            new("width of the spot of light", ImagingOptics.BlurUm(exposure.Lamp)),
            new("share of the coat's absorption that bleaches", coat.Share),
            new("how soon it bleaches beside curing", coat.CuringOverBleaching),
        ];
        Best = [.. Uncertain.Select(input => input.Estimate.Value)];
    }

    internal IReadOnlyList<Uncertain> Uncertain { get; }

    internal IReadOnlyList<double> Best { get; }

    /// <summary>The best values but for the stencil's thickness.</summary>
    internal IReadOnlyList<double> WithStencil(Func<Estimate, double> thickness) => [.. Best.Select((value, i) => i == Stencil ? thickness(Uncertain[i].Estimate) : value)];

    /// <summary>The finest line to hold; where none is told, about the finest the mesh itself prints. [µm]</summary>
    internal static double NeededLineUm(ExposureCase exposure) =>
        exposure.FinestLineUm ?? Math.Max(3 * exposure.Mesh.ThreadUm, 10_000 / exposure.Mesh.CountPerCm);

    /// <summary>Least exposure that cures through behind a thread.</summary>
    internal double Through(IReadOnlyList<double> x) =>
        Math.Log(x[Speed] / CoatOptics.GoodOverLeast) + Light(x).Asks + Math.Log(x[FitThrough]) + Math.Log(x[Ageing]) + Math.Log(x[Spectrum]) + logDistance
        + (Math.Log(10) * (x[DMin] - CoatOptics.ReferenceDMin));

    /// <summary>What a narrow wall asks more than a wide one, since light leaves it sideways.</summary>
    internal double Wall(IReadOnlyList<double> x) => exposure.FinestGapUm is { } gap
        ? Edge(x).LogStripe(gap)
        : 0;

    /// <summary>From through-cure to the most that holds detail and film.</summary>
    internal double Room(IReadOnlyList<double> x) => Math.Min(RoomOfLine(x), RoomOfFilm(x));

    internal bool FilmIsTheLimit => RoomOfFilm(Best) < RoomOfLine(Best);

    /// <summary>Finest line held at an exposure so far above through-cure. [µm]</summary>
    internal double FinestHeldUm(IReadOnlyList<double> x, double aboveThrough) =>
        2 / CoatOptics.ClosedShare * Edge(x).UndercutUm(Surplus(x) + aboveThrough);

    /// <summary>Density of film black that leaves no trace of coat at an exposure so far above through-cure. [1]</summary>
    internal double FilmDensity(double aboveThrough) =>
        Best[DMin] + ((Surplus(Best) + aboveThrough) / Math.Log(10)) + CoatOptics.TraceDensity + CoatOptics.DensityMargin;

    private double RoomOfLine(IReadOnlyList<double> x) => Edge(x).LogExcess(CoatOptics.ClosedShare * lineUm / 2) - Surplus(x);

    private double RoomOfFilm(IReadOnlyList<double> x) =>
        (Math.Log(10) * (x[DMax] - x[DMin] - CoatOptics.TraceDensity - CoatOptics.DensityMargin)) - Surplus(x);

    /// <summary>
    /// At through-cure, dose at the print side over what just hardens it there: on the usual stencil the wedge reads its usual solid step, and light tells how another stencil differs from it.
    /// </summary>
    private double Surplus(IReadOnlyList<double> x) =>
        (Math.Log(10) * StepWedge.DensityOf(StepWedge.UsualSolidStep)) - Math.Log(CoatOptics.GoodOverLeast) + Light(x).Surplus;

    private EdgeCurve Edge(IReadOnlyList<double> x) => Light(x).Edge.Times(x[FitEdge]).Blurred(x[Blur]);

    private LightOutcome Light(IReadOnlyList<double> x) => light.At(x[Stencil], coat.LawOf(x[Penetration], x[Bleaching], x[CuringOverBleaching]), x[Scattering], x[Threads], x[Gap]);

    private static double LogDistance(Lamp lamp)
    {
        if (lamp.DistanceMm is not { } distance || !LampGeometry.IsNearPoint(lamp.Kind))
            return 0;
        return Math.Log(LampGeometry.AtDistance(lamp.Kind, UsualExposure.DistanceMm(lamp.Kind), distance).Factor ?? 1);
    }

    private static Estimate? Known(double? density) =>
        density is { } measured ? Estimate.Exact(measured, Ground.MeasuredHere) : null;
}
