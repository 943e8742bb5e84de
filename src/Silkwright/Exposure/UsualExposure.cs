using Silkwright.Emulsion;
using Silkwright.Estimates;

namespace Silkwright.Exposure;

/// <summary>
/// What exposures come to before any test: one coat a side on dyed 120/34 mesh, dry. Common practice, a factor of two to three
/// either way: docs/engines/exposure.md, defaults. Good for knowing the order of magnitude, never for making a screen.
/// </summary>
internal static class UsualExposure
{
    /// <summary>Distance that the figures for lamps near a point speak of. [mm]</summary>
    internal static double DistanceMm(LampKind kind) => kind == LampKind.Halogen ? 400 : 1000;

    /// <summary>Factor either way before any test. [1]</summary>
    internal const double Spread = 2.5;

    /// <summary>Of a film and the emulsion it is laid with, the slower one decides.</summary>
    internal static double Seconds(LampKind kind, StencilEmulsion emulsion) => emulsion.LaidWith is { } laying
        ? Math.Max(Alone(kind, emulsion), Alone(kind, laying))
        : Alone(kind, emulsion);

    private static double Alone(LampKind kind, StencilEmulsion emulsion) => emulsion.RelativeExposure is { } relative
        ? relative * Middle(kind, EmulsionFamily.Diazo)
        : Middle(kind, emulsion.Family);

    /// <summary>Exposure now over that with a new lamp. [1]; about 1.4 at the age for relamping. Common practice.</summary>
    internal static Estimate Ageing(Lamp lamp)
    {
        var lifeHours = lamp.Kind switch
        {
            LampKind.MetalHalide => 1250.0,
            LampKind.TubeBank => 750,
            LampKind.Halogen => 1250,
            LampKind.LedArray => double.PositiveInfinity,
            _ => throw new ArgumentOutOfRangeException(nameof(lamp), lamp.Kind, "Unknown lamp."),
        };
        var age = Math.Min(2, Math.Max(0, lamp.Hours ?? 0) / lifeHours);
        return new Estimate(1 + (0.4 * age), 1 + (0.2 * age), 1 + (0.6 * age), Ground.CommonPractice);
    }

    private static double Middle(LampKind kind, EmulsionFamily family)
    {
        var (low, high) = (kind, family) switch
        {
            (LampKind.MetalHalide, EmulsionFamily.Diazo) => (60.0, 150.0),
            (LampKind.MetalHalide, EmulsionFamily.DualCure) => (40, 90),
            (LampKind.MetalHalide, EmulsionFamily.Photopolymer) => (8, 25),
            (LampKind.LedArray, EmulsionFamily.Diazo) => (30, 90),
            (LampKind.LedArray, EmulsionFamily.DualCure) => (15, 60),
            (LampKind.LedArray, EmulsionFamily.Photopolymer) => (3, 15),
            (LampKind.TubeBank, EmulsionFamily.Diazo) => (360, 720),
            (LampKind.TubeBank, EmulsionFamily.DualCure) => (180, 480),
            (LampKind.TubeBank, EmulsionFamily.Photopolymer) => (60, 180),
            (LampKind.Halogen, EmulsionFamily.Diazo) => (600, 1800),
            (LampKind.Halogen, EmulsionFamily.DualCure) => (300, 1200),
            (LampKind.Halogen, EmulsionFamily.Photopolymer) => (90, 360),
            // A film is as fast as its sensitiser, which its family does not tell: between photopolymer and dual-cure.
            (_, EmulsionFamily.CapillaryFilm) => (Middle(kind, EmulsionFamily.Photopolymer), Middle(kind, EmulsionFamily.DualCure)),
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Unknown lamp or family."),
        };
        return Math.Sqrt(low * high);
    }
}
