namespace Silkwright.Light.Surface;

/// <summary>What the polynomials are made of: a place told so that its light changes about evenly along each.</summary>
/// <remarks>Absorption and scattering as lengths of them, slanted light as the shadow it throws, orders of magnitude as logarithms; each brought to −1 to 1 over the range.</remarks>
internal static class SurfaceFeatures
{
    public const int Count = 14;

    /// <summary>Of the light in a cone, about as much lands beyond this part of its shadow as is left at the undercuts. [1]</summary>
    private const double ShadowPart = 0.6;

    private const double FilmIndex = 1.5;

    private static readonly double Widest = Shadow(200, 200, Math.Sin(75 * Math.PI / 180) * ShadowPart);

    /// <param name="place">Inside the range.</param>
    /// <param name="features">Where to put them.</param>
    public static void Of(SurfacePlace place, Span<double> features)
    {
        var umPerCm = 1e-4;
        var stencil = place.StencilUm;
        var sine = Math.Sin(place.HalfAngleDegrees * Math.PI / 180);
        var shadow = Shadow(place.GapUm, place.CarrierUm, sine * ShadowPart);
        features[0] = Log(place.ThreadUm, 27, 260);
        features[1] = Even(place.Cover, 0.2, 0.58);
        features[2] = Even(place.ThicknessPerThread, 1.35, 1.85);
        features[3] = Log(place.PrintSideUm, 2, 60);
        features[4] = Log(place.SqueegeeSideUm, 0.5, 15);
        features[5] = Even(place.AbsorptionLengths, 0, 7);
        features[6] = Log(place.CoatScatteringPerCm * (1 - place.CoatAnisotropy) * stencil * umPerCm, 0.02, 40);
        features[7] = Even(place.CoatAnisotropy, 0.65, 0.95);
        features[8] = Log(place.ThreadAbsorptionPerCm * place.ThreadUm * umPerCm, 0.0027, 18);
        features[9] = Log(place.ThreadScatteringPerCm * place.ThreadUm * umPerCm, 0.02, 6.5);
        features[10] = Even(sine, 0, Math.Sin(75 * Math.PI / 180));
        features[11] = Log(shadow + SurfaceFigures.FinestUm, SurfaceFigures.FinestUm, Widest + SurfaceFigures.FinestUm);
        features[12] = Even(place.CarrierUm / (place.CarrierUm + place.GapUm + 1), 0, 1);
        features[13] = Even(Math.Sqrt(place.BackingReflectance), 0, Math.Sqrt(0.9));
    }

    private static double Shadow(double gapUm, double carrierUm, double sine) =>
        (gapUm * sine / Math.Sqrt(1 - (sine * sine))) + (carrierUm * sine / FilmIndex / Math.Sqrt(1 - (sine * sine / FilmIndex / FilmIndex)));

    private static double Even(double value, double low, double high) => (2 * (value - low) / (high - low)) - 1;

    private static double Log(double value, double low, double high) => Even(Math.Log(value), Math.Log(low), Math.Log(high));
}
