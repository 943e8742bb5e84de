namespace Silkwright.Light.Surface;

/// <summary>What the surface was fitted over.</summary>
public static class SurfaceRange
{
    /// <summary>Fewest and most threads. [1/cm]</summary>
    private const double FewestPerCm = 10, MostPerCm = 165;

    /// <summary>A coat thicker than this many absorption lengths no light cures through. [1]</summary>
    public const double MostAbsorptionLengths = 6;

    /// <summary>[µm]</summary>
    public const double LeastPrintSideUm = 2;

    /// <summary>[µm]</summary>
    public const double MostPrintSideUm = 60;

    /// <summary>By name and unit, from and to.</summary>
    public static IReadOnlyList<SurfaceAxis> Axes { get; } =
    [
        new("thread", "um", 27, 260, place => place.ThreadUm, (place, value) => place with { ThreadUm = value }),
        new("count times thread", "", 0.2, 0.58, place => place.Cover, (place, value) => place with { Cover = value }),
        new("fabric over thread", "", 1.4, 1.75, place => place.ThicknessPerThread, (place, value) => place with { ThicknessPerThread = value }),
        new("coat on the print side", "um", LeastPrintSideUm, MostPrintSideUm, place => place.PrintSideUm, (place, value) => place with { PrintSideUm = value }),
        new("coat on the squeegee side", "um", 1, 10, place => place.SqueegeeSideUm, (place, value) => place with { SqueegeeSideUm = value }),
        new("absorption of the coat", "/cm", 50, 290, place => place.CoatAbsorptionPerCm, (place, value) => place with { CoatAbsorptionPerCm = value }),
        new("scattering of the coat", "/cm", 100, 1600, place => place.CoatScatteringPerCm, (place, value) => place with { CoatScatteringPerCm = value }),
        new("mean cosine in the coat", "", 0.7, 0.93, place => place.CoatAnisotropy, (place, value) => place with { CoatAnisotropy = value }),
        new("absorption of the threads", "/cm", 1, 600, place => place.ThreadAbsorptionPerCm, (place, value) => place with { ThreadAbsorptionPerCm = value }),
        new("scattering of the threads", "/cm", 10, 200, place => place.ThreadScatteringPerCm, (place, value) => place with { ThreadScatteringPerCm = value }),
        new("air under the film", "um", 0, 200, place => place.GapUm, (place, value) => place with { GapUm = value }),
        new("film under the image", "um", 0, 200, place => place.CarrierUm, (place, value) => place with { CarrierUm = value }),
        new("half angle of the light", "deg", 0, 75, place => place.HalfAngleDegrees, (place, value) => place with { HalfAngleDegrees = value }),
        new("backing", "", 0, 0.6, place => place.BackingReflectance, (place, value) => place with { BackingReflectance = value }),
    ];

    /// <summary>What of a place lies outside, by name; none: the surface holds.</summary>
    public static IReadOnlyList<string> Outside(SurfacePlace place)
    {
        var outside = Axes.Where(axis => !(axis.Of(place) >= axis.Low && axis.Of(place) <= axis.High)).Select(axis => axis.Name).ToList();
        if (!(place.AbsorptionLengths <= MostAbsorptionLengths))
            outside.Add("absorption lengths of the coat");
        return outside;
    }

    /// <summary>The nearest place that the surface was fitted over.</summary>
    public static SurfacePlace Inside(SurfacePlace place)
    {
        foreach (var axis in Axes)
        {
            var value = axis.Of(place);
            if (!(value >= axis.Low && value <= axis.High))
                place = axis.With(place, Math.Clamp(value, axis.Low, axis.High));
        }

        return place.AbsorptionLengths > MostAbsorptionLengths
            ? place with { CoatAbsorptionPerCm = MostAbsorptionLengths * 1e4 / place.StencilUm }
            : place;
    }

    /// <summary>A fabric that is woven, in a coat that light passes.</summary>
    internal static bool Holds(SurfacePlace place) =>
        place.Cover * 1e4 / place.ThreadUm is >= FewestPerCm and <= MostPerCm && place.AbsorptionLengths <= MostAbsorptionLengths;
}
