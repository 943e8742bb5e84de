using System.Globalization;
using Silkwright.Estimates;

namespace Silkwright.Exposure.Spectra;

/// <summary>Light of kinds of lamp by wavelength: lamps.csv, a ground in each row.</summary>
public static class LampLines
{
    private const string Resource = "Silkwright.Exposure.Spectra.lamps.csv";

    private static readonly Lazy<ILookup<(LampKind Kind, double? PeakNm), SpectrumBand>> Rows = new(Read);

    /// <summary>Bands of a kind of lamp; none where the table has no such line.</summary>
    /// <param name="kind">What it is.</param>
    /// <param name="peakNm">The line that is printed on it; none: not told. [nm]</param>
    public static IReadOnlyList<SpectrumBand> Of(LampKind kind, double? peakNm) => [.. Rows.Value[(kind, peakNm)]];

    private static ILookup<(LampKind Kind, double? PeakNm), SpectrumBand> Read() =>
        EmbeddedText.Read(Resource).Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(1).Select(line => line.TrimEnd('\r').Split(',', 6)).ToLookup(
            cells => (Enum.Parse<LampKind>(cells[0], ignoreCase: true), cells[1].Length > 0 ? Number(cells[1]) : (double?)null),
            cells => new SpectrumBand(Number(cells[2]), Number(cells[3]), Number(cells[4]) / 100, cells[5]));

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
