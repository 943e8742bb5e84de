using Silkwright.Answers;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Plans;
using Silkwright.Web.Jobs;

namespace Silkwright.Web.Questions;

/// <summary>A question as it stands in an address: it can be kept, sent and asked again.</summary>
/// <param name="Given">What was typed, by the names of the question's fields; empty ones left out.</param>
/// <param name="Shelf">Which emulsions are weighed, as the address says it; empty: one of each usual kind.</param>
public sealed record AskedQuestion(IReadOnlyDictionary<string, string> Given, string Shelf)
{
    /// <summary>The name by which an address says which emulsions are weighed.</summary>
    public const string ShelfField = "shelf";

    /// <summary>Somebody has asked: anything at all was typed.</summary>
    public bool IsAsked => Given.Count > 0;

    /// <summary>Which emulsions are weighed; one of each usual kind where the address says nothing that is known.</summary>
    public AskedShelf OutOf => Known ?? AskedShelf.Usual;

    private AskedShelf? Known => Enum.GetValues<AskedShelf>().Cast<AskedShelf?>()
        .FirstOrDefault(shelf => string.Equals(Names.Of(shelf!.Value), Shelf, StringComparison.OrdinalIgnoreCase));

    public static AskedQuestion Of(IQueryCollection query) => new(
        EmulsionQuestion.Fields
            .Select(field => KeyValuePair.Create(field.Name, Typed(field, query[field.Name].ToString().Trim())))
            .Where(given => given.Value.Length > 0)
            .ToDictionary(),
        query[ShelfField].ToString().Trim());

    /// <summary>The form asks for humidity in percent: a bare number there is one.</summary>
    private static string Typed(QuestionField field, string text) =>
        field == EmulsionQuestion.Humidity && text.Length > 0 && char.IsAsciiDigit(text[^1]) ? text + "%" : text;

    /// <summary>What a job keeps of the question, for it to be planned like every other: ink, artwork, garment and run.</summary>
    /// <param name="answer">The question, answered.</param>
    /// <param name="name">What the job is to be called.</param>
    /// <exception cref="InputProblemException">The name says nothing, or more than a name can.</exception>
    public static JobDocument ToJob(EmulsionAnswer answer, string name)
    {
        if (name.Length == 0)
            throw new InputProblemException(new Problem("The job has no name.", "job's name", "Call it what the shop calls it."));
        var colour = answer.Plan.Colour;
        var job = new JobDocument
        {
            Name = name,
            Garment = answer.Job.Garment,
            Run = answer.Job.Run,
            Colours = [new JobDocumentColour { Name = "Colour 1", Ink = colour.Ink, Kind = colour.Kind, Needs = colour.Needs }],
        };
        return JobReader.Read(JobWriter.Write(job), "this form");
    }

    /// <summary>Whether the shop's own shelf is held against the kept catalogue.</summary>
    /// <exception cref="InputProblemException">Neither that shelf nor the shop's own is asked for.</exception>
    public bool WithCatalogue() => (Shelf.Length == 0 ? AskedShelf.Own : Known) switch
    {
        AskedShelf.Own => false,
        AskedShelf.OwnAndCatalogue => true,
        _ => throw Unknown([Names.Of(AskedShelf.Own), Names.Of(AskedShelf.OwnAndCatalogue)]),
    };

    private static InputProblemException Unknown(IEnumerable<string> known) => new(new Problem(
        "There is no such shelf to choose from.", ShelfField, $"Ask for one of {string.Join(", ", known)}, or leave it out."));

    /// <exception cref="InputProblemException">Something typed is wrong or missing; carries every fault. Or the kept catalogue is asked for, and none is kept.</exception>
    public async Task<EmulsionAnswer> AnswerAsync(JobDesk desk, CancellationToken cancel)
    {
        if (Shelf.Length > 0 && Known is null)
            throw Unknown(Names.All<AskedShelf>());
        var (shop, notes) = OutOf switch
        {
            AskedShelf.Own => await desk.KnownShopAsync(null, cancel),
            AskedShelf.Catalogue => await desk.KnownShopAsync(new Shop(), null, keptCatalogue: true, cancel),
            AskedShelf.OwnAndCatalogue => await desk.KnownShopAsync(null, null, keptCatalogue: true, cancel),
            _ => (new Shop(), []),
        };
        var answer = EmulsionQuestion.Answer(new GivenTexts(Given), shop, desk.Today);
        return answer with { Assumed = [.. answer.Assumed, .. notes] };
    }
}
