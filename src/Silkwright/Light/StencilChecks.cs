namespace Silkwright.Light;

/// <summary>What cannot be followed.</summary>
internal static class StencilChecks
{
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside its range.</exception>
    public static void ThrowIfImpossible(StencilCase stencil)
    {
        Must(stencil.Photons is >= StencilTransport.Batches and <= int.MaxValue * (long)StencilTransport.Batches, stencil.Photons, "Photons are too few for batches, or more than anybody could follow.");
        Must(stencil.Lamp is { HalfAngleDegrees: >= 0 and <= 90, SlantDegrees: > -90 and < 90, LatticeTangent: >= 0 and <= 10 }, stencil.Lamp, "The lamp's light comes from above.");
        Must(stencil.Lamp.IsAboveGlass, stencil.Lamp, "The slanted cone reaches below the glass.");
        Must(stencil.Image.Kind == FilmImageKind.Edge || stencil.Image.WidthUm is > 0 and < 1e6, stencil.Image, "A line or a gap has a width above 0.");
        Must(stencil.FilmIndex is >= 1 and <= 3 && stencil.BackingIndex is >= 1 and <= 3, stencil.FilmIndex, "A refractive index lies from 1 to 3.");
        Must(stencil is { CarrierUm: >= 0 and <= 1e4, GapUm: >= 0 and <= 1e4, PrintSideUm: >= 0 and <= 1e4, SqueegeeSideUm: >= 0 and <= 1e4 }, stencil.GapUm, "A thickness is 0 to 10000 µm.");
        Must(stencil.StencilUm > 0, stencil.StencilUm, "The stencil has no thickness.");
        Must(stencil.BackingReflectance is >= 0 and <= 1, stencil.BackingReflectance, "A reflectance lies from 0 to 1.");
        Must(Allowed(stencil.Coat), stencil.Coat, "A value of the coat lies outside its range.");
        if (stencil.Weave is not { } weave)
            return;
        Must(Allowed(weave.Thread), weave.Thread, "A value of the thread lies outside its range.");
        Must(weave.ThreadUm > 0 && weave.PitchUm > weave.ThreadUm && weave.PitchUm <= 1e4, weave.PitchUm, "Threads lie apart: the pitch is above the thread.");
        Must(weave.ThicknessUm >= weave.ThreadUm && weave.ThicknessUm <= 2 * weave.ThreadUm, weave.ThicknessUm, "A fabric is one to two threads thick.");
        Must(double.IsFinite(weave.AngleDegrees), weave.AngleDegrees, "An angle is a number.");
    }

    private static bool Allowed(TurbidMedium medium) =>
        medium is { RefractiveIndex: >= 1 and <= 3, AbsorptionPerCm: >= 0, ScatteringPerCm: >= 0, Anisotropy: > -1 and < 1 } && double.IsFinite(medium.ExtinctionPerCm);

    private static void Must(bool holds, object stencil, string words)
    {
        if (!holds)
            throw new ArgumentOutOfRangeException(nameof(stencil), stencil, words);
    }
}
