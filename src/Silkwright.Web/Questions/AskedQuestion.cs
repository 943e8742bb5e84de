using Silkwright.Answers;
using Silkwright.Contracts;
using Silkwright.Plans;
using Silkwright.Web.Jobs;

namespace Silkwright.Web.Questions;

/// <summary>A question as it stands in an address: it can be kept, sent and asked again.</summary>
/// <param name="Given">What was typed, by the names of the question's fields; empty ones left out.</param>
/// <param name="OwnShelf">Out of this shop's emulsions instead of one of each usual kind.</param>
public sealed record AskedQuestion(IReadOnlyDictionary<string, string> Given, bool OwnShelf)
{
    private const string ShelfName = "shelf";
    private const string OwnShelfWord = "own";

    /// <summary>Somebody has asked: anything at all was typed.</summary>
    public bool IsAsked => Given.Count > 0;

    public static AskedQuestion Of(IQueryCollection query) => new(
        EmulsionQuestion.Fields
            .Select(field => KeyValuePair.Create(field.Name, query[field.Name].ToString().Trim()))
            .Where(given => given.Value.Length > 0)
            .ToDictionary(),
        query[ShelfName] == OwnShelfWord);

    /// <exception cref="Estimates.InputProblemException">Something typed is wrong or missing; carries every fault.</exception>
    public async Task<EmulsionAnswer> AnswerAsync(JobDesk desk, CancellationToken cancel) => EmulsionQuestion.Answer(
        new GivenTexts(Given), OwnShelf ? await desk.ShopAsync(null, cancel) : new Shop(), desk.Today);
}
