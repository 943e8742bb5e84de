using Silkwright.Contracts;
using Silkwright.Film.Measuring;
using Silkwright.Film.Readers;

namespace Silkwright.Cli.Commands.Film;

/// <summary>What <c>film</c> asks for beside the files.</summary>
internal static class FilmQuestion
{
    private static readonly QuantityField Dpi = new("dpi", QuantityKind.Number, "resolution that overrules the film's own, in pixels an inch")
    {
        Least = FilmLimits.LeastDpi,
        Most = FilmLimits.MostDpi,
    };

    private static readonly ChoiceField Polarity = ChoiceField.Of<FilmPolarity>("polarity", "what prints: black on a positive (when not given), clear on a negative");

    public static IReadOnlyList<QuestionField> Fields => [Dpi, Polarity];

    /// <exception cref="Estimates.InputProblemException">Something typed is wrong.</exception>
    public static FilmOptions Read(GivenTexts given)
    {
        var options = new FilmOptions(given.Read(Dpi), given.Read<FilmPolarity>(Polarity) ?? FilmPolarity.Positive);
        given.ThrowIfAny();
        return options;
    }
}
