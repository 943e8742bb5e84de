using Silkwright.Contracts;
using Silkwright.Light;

namespace Silkwright.Web.Questions;

/// <summary>The question about light beside a film's edge as it stands in an address.</summary>
/// <param name="Given">What was typed, by the names of the question's fields; empty ones left out.</param>
public sealed record EdgeForm(IReadOnlyDictionary<string, string> Given)
{
    /// <summary>Photons followed for one asker, those for the intervals not counted: a few seconds of one core.</summary>
    public const long MostPhotons = 2_000_000;

    /// <summary>Photons for a page: a second or two.</summary>
    private const string PagePhotons = "300000";

    public bool IsAsked => Given.Count > 0;

    public static EdgeForm Of(IQueryCollection query) => new(EdgeQuestion.Fields
        .Select(field => KeyValuePair.Create(field.Name, Typed(field, query[field.Name].ToString().Trim())))
        .Where(given => given.Value.Length > 0)
        .ToDictionary());

    /// <exception cref="Estimates.InputProblemException">Something typed is wrong or missing, or it is too much; carries every fault.</exception>
    public async Task<EdgeAnswer> AnswerAsync(TimeProvider time, CancellationToken cancel)
    {
        var given = new Dictionary<string, string>(Given);
        _ = given.TryAdd(EdgeQuestion.Photons.Name, PagePhotons);
        return (await FollowAsync(EdgeQuestion.Read(new GivenTexts(given)), time, cancel)).Answer;
    }

    /// <summary>Follows a case's photons for a page or a program.</summary>
    /// <exception cref="Estimates.InputProblemException">It is too much.</exception>
    internal static Task<(EdgeAnswer Answer, double Seconds)> FollowAsync(EdgeAsked asked, TimeProvider time, CancellationToken cancel) =>
        LightWork.RunAsync(asked.Case.Photons, MostPhotons, "light edge", stop => EdgeAnswer.Of(asked, threads: 1, cancel: stop), time, cancel);

    /// <summary>The form says degrees and percent itself: a bare number there is one.</summary>
    private static string Typed(QuestionField field, string text) => text.Length == 0 || !char.IsAsciiDigit(text[^1])
        ? text
        : field is QuantityField { Kind: var kind } ? text + (kind == QuantityKind.Angle ? "deg" : kind == QuantityKind.Share ? "%" : "") : text;
}
