using Silkwright.Emulsion;
using Silkwright.Estimates;

namespace Silkwright.Exposure;

/// <summary>A lamp's light beside the light an emulsion answers to.</summary>
/// <remarks>docs/engines/exposure.md, "Lamp and sensitive band". Bands by kind of lamp: trade practice, no source.</remarks>
public static class LampSpectrum
{
    /// <summary>A diode's line reaches so far to either side of its peak. Common practice. [nm]</summary>
    private const double DiodeHalfWidthNm = 10;

    /// <summary>Any other lamp whose peak is named: about the half width of a coated tube. Guess, no source. [nm]</summary>
    private const double OtherHalfWidthNm = 35;

    /// <summary>The ends of a printed band are good to this share: <c>CatalogueProperties.SensitiveFrom</c>. [1]</summary>
    private const double EndShare = 0.03;

    /// <summary>However little of the light is in the band, no more than this is told; beyond it nobody can say. [1]</summary>
    private const double LeastShare = 0.1;

    /// <summary>Where most of the light that hardens stencils lies. [nm]</summary>
    public static (double FromNm, double ToNm) Band(Lamp lamp) => (lamp.PeakNm, lamp.Kind) switch
    {
        ({ } peak, LampKind.LedArray) => (peak - DiodeHalfWidthNm, peak + DiodeHalfWidthNm),
        ({ } peak, _) => (peak - OtherHalfWidthNm, peak + OtherHalfWidthNm),
        (null, LampKind.MetalHalide) => (350, 450),
        // one of the lines 365, 385, 395 and 405 nm, and nobody said which
        (null, LampKind.LedArray) => (355, 415),
        (null, LampKind.TubeBank) => (350, 420),
        (null, LampKind.Halogen) => (380, 500),
        _ => throw new ArgumentOutOfRangeException(nameof(lamp), lamp.Kind, "Unknown lamp."),
    };

    /// <summary>None of the lamp's light is in the band of the emulsion, or of a part of it, even with the band's ends moved by their spread.</summary>
    public static bool Misses(Lamp lamp, StencilEmulsion emulsion) =>
        Alone(lamp, emulsion, EndShare) is 0 || (emulsion.LaidWith is { } laying && Misses(lamp, laying));

    /// <summary>
    /// Exposure beside that of an emulsion whose band holds all of the lamp's light: one over the share that it holds. [1], 1 or more; 1
    /// where the band is not told.
    /// </summary>
    /// <remarks>Takes light and answer as even over their bands, which neither is: hence from no effect at all to the square of it.</remarks>
    public static Estimate Factor(Lamp lamp, StencilEmulsion emulsion)
    {
        var share = Math.Min(Alone(lamp, emulsion, 0) ?? 1, emulsion.LaidWith is { } laying ? Alone(lamp, laying, 0) ?? 1 : 1);
        var factor = 1 / Math.Max(share, LeastShare);
        return factor <= 1 ? Estimate.Exact(1, Ground.Model) : new Estimate(factor, 1, factor * factor, Ground.CommonPractice);
    }

    /// <summary>Share of the lamp's band that the emulsion's holds; none where the emulsion's is not told. [1]</summary>
    private static double? Alone(Lamp lamp, StencilEmulsion emulsion, double endShare)
    {
        if (emulsion is not { SensitiveFromNm: { } from, SensitiveToNm: { } to } || to <= from)
            return null;
        var (lampFrom, lampTo) = Band(lamp);
        var shared = Math.Min(lampTo, to * (1 + endShare)) - Math.Max(lampFrom, from * (1 - endShare));
        return Math.Clamp(shared / (lampTo - lampFrom), 0, 1);
    }
}
