using System.Text.Json.Nodes;
using Silkwright.Contracts;
using Silkwright.Web.Jobs;
using Silkwright.Web.Questions;

namespace Silkwright.Web.Api;

/// <summary>One engine each, asked in the query string with the texts the shell takes: <c>?count=61/cm&amp;thread=64um</c>.</summary>
internal static class QuestionEndpoints
{
    public static void Map(IEndpointRouteBuilder api)
    {
        Add(api, "/mesh", "The geometry of a woven mesh", MeshQuestion.Fields, given => MeshDocument.Of(MeshQuestion.Answer(given)));
        Add(api, "/mesh/moire", "How a halftone beats with mesh and knit", MoireQuestion.Fields, given => MoireDocument.Of(MoireQuestion.Answer(given)));
        Add(api, "/ink", "Ink laid and used", InkQuestion.Fields, given => InkDocument.Of(InkQuestion.Answer(given)));
        Add(api, "/expose/step", "An exposure corrected by a step wedge", StepQuestion.Fields, given => StepDocument.Of(StepQuestion.Answer(given)));
        Add(api, "/dry/air", "The state of moist air", AirQuestion.Fields, given => AirDocument.Of(AirQuestion.Answer(given)));
        api.MapGet("/choose", Choose)
            .WithSummary("Which emulsion for an ink and a run")
            .WithDescription($"{Describe(EmulsionQuestion.Fields)}\nshelf: which emulsions are weighed: usual, own, catalogue (the kept one's) or ownAndCatalogue.")
            .Produces<JsonObject>()
            .ProducesProblem(StatusCodes.Status400BadRequest);
        Add(api, "/dry/time", "How long a coat dries", DryingQuestion.Fields, given => DryingDocument.Of(DryingQuestion.Answer(given)));
    }

    private static void Add(
        IEndpointRouteBuilder api, string path, string summary, IReadOnlyList<QuestionField> fields, Func<GivenTexts, JsonObject> answer) =>
        api.MapGet(path, (HttpRequest request) => Documents.Ok(answer(Given(request))))
            .WithSummary(summary)
            .WithDescription(Describe(fields))
            .Produces<JsonObject>()
            .ProducesProblem(StatusCodes.Status400BadRequest);

    /// <summary>For one emulsion of each usual kind, or out of what <c>shelf</c> names: <see cref="AskedShelf"/>.</summary>
    private static async Task<IResult> Choose(HttpRequest request, JobDesk desk, CancellationToken cancel) =>
        Documents.Ok(EmulsionAnswerDocument.Of(await AskedQuestion.Of(request.Query).AnswerAsync(desk, cancel)));

    private static string Describe(IReadOnlyList<QuestionField> fields) =>
        string.Join("\n", fields.Select(f => $"{f.Name}: {f.Meaning}, for example {f.Example}."));

    private static GivenTexts Given(HttpRequest request) =>
        new(request.Query.ToDictionary(q => q.Key, q => q.Value.ToString()));
}
