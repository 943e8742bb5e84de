using System.Globalization;
using Silkwright.Light.Surface;

namespace Silkwright.Exposure;

/// <summary>How to have the photons of a stencil followed where the fitted light does not reach.</summary>
internal static class FreshLight
{
    /// <summary>What lies outside, what the window then rests on, and the very command that follows this stencil's light; none: the fitted light holds.</summary>
    internal static string? Ask(ExposureCase exposure)
    {
        var place = StencilLight.BestPlace(exposure);
        return SurfaceRange.Outside(place) is { Count: > 0 } outside
            ? $"Outside the range of the fitted light: {string.Join(", ", outside)}. The window is told at the nearest stencil inside, dose falls on by absorption alone, and the fit's error is counted twice. To follow the photons of this one: {Command(exposure, place)}"
            : null;
    }

    /// <summary>Absorption of dyed threads is not among what may be asked: there the usual one is taken.</summary>
    private static string Command(ExposureCase exposure, SurfacePlace place) => string.Create(
        CultureInfo.InvariantCulture,
        $"silkwright light edge --count {exposure.Mesh.CountPerCm:0.###}/cm --thread {exposure.Mesh.ThreadUm:0.###}um --mesh-colour {(exposure.Mesh.Dyed ? "dyed" : "white")} --eom {place.PrintSideUm:0.#}um --squeegee-side {place.SqueegeeSideUm:0.#}um --mua {place.CoatAbsorptionPerCm:0.#}/cm --mus {place.CoatScatteringPerCm:0.#}/cm --half-angle {place.HalfAngleDegrees:0.#}deg --gap {place.GapUm:0.#}um --backing {100 * place.BackingReflectance:0.#}%");
}
