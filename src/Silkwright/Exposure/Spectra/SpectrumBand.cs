namespace Silkwright.Exposure.Spectra;

/// <summary>A part of a lamp's light that hardens stencils, taken as even.</summary>
/// <param name="FromNm">[nm]</param>
/// <param name="ToNm">[nm], above the first.</param>
/// <param name="Share">Of the lamp's light between its ends. [1]</param>
/// <param name="Ground">Where that comes from, in words.</param>
public sealed record SpectrumBand(double FromNm, double ToNm, double Share, string Ground);
