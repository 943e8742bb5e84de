using System.Globalization;
using Silkwright.Emulsion;
using Silkwright.Estimates;

namespace Silkwright.Exposure.Spectra;

/// <summary>Which light the families of emulsions answer to: answers.csv, a ground in each row.</summary>
public static class FamilyAnswers
{
    private const string Resource = "Silkwright.Exposure.Spectra.answers.csv";

    private static readonly Lazy<ILookup<EmulsionFamily, AnswerBand>> Rows = new(Read);

    /// <summary>Bands of a family, from short to long; what lies outside them it does not answer to.</summary>
    public static IReadOnlyList<AnswerBand> Of(EmulsionFamily family) => [.. Rows.Value[family]];

    /// <summary>How well a family answers to light, beside as much light where it answers best. [1]</summary>
    /// <param name="family">The family.</param>
    /// <param name="light">Of a lamp.</param>
    public static double To(EmulsionFamily family, IReadOnlyList<SpectrumBand> light) => light.Sum(band => Of(family).Sum(answer => answer.Answer * band.ShareIn(answer.FromNm, answer.ToNm)));

    private static ILookup<EmulsionFamily, AnswerBand> Read() =>
        EmbeddedText.Read(Resource).Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(1).Select(line => line.TrimEnd('\r').Split(',', 5)).ToLookup(
            cells => Enum.Parse<EmulsionFamily>(cells[0], ignoreCase: true),
            cells => new AnswerBand(Number(cells[1]), Number(cells[2]), Number(cells[3]), cells[4]));

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
