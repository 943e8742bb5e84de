namespace Silkwright.Exposure.Spectra;

/// <summary>A part of a lamp's light that hardens stencils, taken as even.</summary>
/// <param name="FromNm">[nm]</param>
/// <param name="ToNm">[nm], above the first.</param>
/// <param name="Share">Of the lamp's light between its ends. [1]</param>
/// <param name="Ground">Where that comes from, in words.</param>
public sealed record SpectrumBand(double FromNm, double ToNm, double Share, string Ground)
{
    /// <summary>Of the lamp's light, what lies in this band and between two wavelengths. [1]</summary>
    public double ShareIn(double fromNm, double toNm) => Share * Math.Clamp((Math.Min(ToNm, toNm) - Math.Max(FromNm, fromNm)) / (ToNm - FromNm), 0, 1);
}
