using System.Globalization;

namespace Silkwright.Records.Films;

/// <summary>What a measurement depends on.</summary>
/// <param name="FilmHash">The film, by what it holds.</param>
/// <param name="Dpi">Resolution that overruled the file's; none: the file's own. [1/in]</param>
/// <param name="Negative">Clear prints, not black.</param>
/// <param name="MeasuringVersion">The way of measuring: change it and everything is measured again.</param>
public sealed record MeasuringKey(string FilmHash, double? Dpi, bool Negative, string MeasuringVersion)
{
    /// <summary>Page of a PDF, from 1.</summary>
    public int Page { get; init; } = 1;

    /// <summary>Resolution, polarity and page in one word, the same on every machine.</summary>
    public string Options =>
        (Dpi is { } dpi ? dpi.ToString("R", CultureInfo.InvariantCulture) : "file") + (Negative ? "-negative" : "-positive")
        + (Page > 1 ? string.Create(CultureInfo.InvariantCulture, $"-page{Page}") : "");
}
