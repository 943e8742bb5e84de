using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Exposure.Spectra;

namespace Silkwright.Exposure;

/// <summary>A lamp's light beside the light an emulsion answers to.</summary>
/// <remarks>docs/engines/exposure.md, "Lamp and sensitive band". Light by kind of lamp: Spectra/lamps.csv.</remarks>
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

    /// <summary>The lamp's light by wavelength: as tabled for its kind, or even about the line that is printed on it.</summary>
    public static IReadOnlyList<SpectrumBand> Bands(Lamp lamp)
    {
        var tabled = LampLines.Of(lamp.Kind, lamp.PeakNm);
        if (tabled.Count > 0 || lamp.PeakNm is not { } peak)
            return tabled;
        var half = lamp.Kind == LampKind.LedArray ? DiodeHalfWidthNm : OtherHalfWidthNm;
        return [new(peak - half, peak + half, 1, "even about the line that is printed on it")];
    }

    /// <summary>Where most of the light that hardens stencils lies. [nm]</summary>
    public static (double FromNm, double ToNm) Band(Lamp lamp)
    {
        var bands = Bands(lamp);
        return (bands.Min(band => band.FromNm), bands.Max(band => band.ToNm));
    }

    /// <summary>None of the lamp's light is in the band of the emulsion, or of a part of it, even with the band's ends moved by their spread.</summary>
    public static bool Misses(Lamp lamp, StencilEmulsion emulsion) =>
        Alone(lamp, emulsion, EndShare) is 0 || (emulsion.LaidWith is { } laying && Misses(lamp, laying));

    /// <summary>The lamp's own line is told, and so little of it lies where the emulsion's family answers that <see cref="Factor"/> can't say how much longer it takes.</summary>
    internal static bool HardlyHardens(Lamp lamp, StencilEmulsion emulsion) =>
        lamp.PeakNm is not null && !IsBandTold(emulsion) && FamilyAnswers.To(emulsion.Family, Bands(lamp)) < LeastShare;

    /// <summary>
    /// Exposure beside that of an emulsion whose band holds all of the lamp's light: one over the share that it holds. Where the band is not told, beside that under a usual lamp of the kind, by how
    /// the family answers to either's light (<see cref="FamilyAnswers"/>): 1 where the lamp's own line is not told. [1]
    /// </summary>
    /// <remarks>Takes the answer as even over a told band, which it is not, and light and answer as tabled: hence from no effect at all to the square of it.</remarks>
    public static Estimate Factor(Lamp lamp, StencilEmulsion emulsion)
    {
        var factor = Math.Max(FactorAlone(lamp, emulsion), emulsion.LaidWith is { } laying ? FactorAlone(lamp, laying) : 0);
        return factor == 1 ? Estimate.Exact(1, Ground.Model) : new Estimate(factor, Math.Min(1, factor * factor), Math.Max(1, factor * factor), Ground.CommonPractice);
    }

    /// <summary>The sensitive band of the emulsion, or of what it is laid with, is told.</summary>
    internal static bool IsBandTold(StencilEmulsion emulsion) =>
        emulsion is { SensitiveFromNm: not null, SensitiveToNm: not null } || (emulsion.LaidWith is { } laying && IsBandTold(laying));

    private static double FactorAlone(Lamp lamp, StencilEmulsion emulsion)
    {
        if (Alone(lamp, emulsion, 0) is { } share)
            return 1 / Math.Max(share, LeastShare);
        return lamp.PeakNm is null ? 1 : Answer(Bands(lamp with { PeakNm = null })) / Answer(Bands(lamp));

        double Answer(IReadOnlyList<SpectrumBand> light) => Math.Max(LeastShare, FamilyAnswers.To(emulsion.Family, light));
    }

    /// <summary>Share of the lamp's light that the emulsion's band holds; none where the emulsion's is not told. [1]</summary>
    private static double? Alone(Lamp lamp, StencilEmulsion emulsion, double endShare) => emulsion is { SensitiveFromNm: { } from, SensitiveToNm: { } to } && to > from
        ? Math.Min(1, Bands(lamp).Sum(band => band.ShareIn(from * (1 - endShare), to * (1 + endShare))))
        : null;
}
