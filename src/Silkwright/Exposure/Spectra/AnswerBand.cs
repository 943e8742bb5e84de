namespace Silkwright.Exposure.Spectra;

/// <summary>How well a family answers to light between two wavelengths, taken as even.</summary>
/// <param name="FromNm">[nm]</param>
/// <param name="ToNm">[nm], above the first.</param>
/// <param name="Answer">Beside its best. [1], 0 to 1.</param>
/// <param name="Ground">Where that comes from, in words.</param>
public sealed record AnswerBand(double FromNm, double ToNm, double Answer, string Ground);
