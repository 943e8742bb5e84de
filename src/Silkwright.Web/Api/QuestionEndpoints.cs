using System.Text.Json.Nodes;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Light;
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
        api.MapGet("/light/slab", Slab)
            .WithSummary("Where a beam on a slab ends: thrown back, let through, absorbed")
            .WithDescription(Describe(SlabQuestion.Fields))
            .Produces<JsonObject>()
            .ProducesProblem(StatusCodes.Status400BadRequest);
        api.MapGet("/light/edge", Edge)
            .WithSummary("The dose in a coated mesh beside a film's edge, line or gap")
            .WithDescription($"{Describe(EdgeQuestion.Fields)}\nAt most {EdgeForm.MostPhotons} photons.")
            .Produces<JsonObject>()
            .ProducesProblem(StatusCodes.Status400BadRequest);
        Add(api, "/ink", "Ink laid and used", InkQuestion.Fields, given => InkDocument.Of(InkQuestion.Answer(given)));
        Add(api, "/expose/step", "An exposure corrected by a step wedge", StepQuestion.Fields, given => StepDocument.Of(StepQuestion.Answer(given)));
        Add(api, "/expose/window", "Least, aim and most exposure", ExposureQuestion.Fields, given => WindowDocument.Of(ExposureQuestion.Window(given)));
        Add(api, "/expose/ladder", "A step test to make", LadderQuestion.Fields, given => LadderDocument.Of(LadderQuestion.Answer(given)));
        Add(api, "/expose/curve", "How deep a coat cures by dose", CurveQuestion.Fields, given => CurveDocument.Of(CurveQuestion.Answer(given)));
        Add(api, "/dry/air", "The state of moist air", AirQuestion.Fields, given => AirDocument.Of(AirQuestion.Answer(given)));
        api.MapGet("/choose", Choose)
            .WithSummary("Which emulsion for an ink and a run")
            .WithDescription($"{Describe(EmulsionQuestion.Fields)}\nshelf: which emulsions are weighed: usual, own, catalogue (the kept one's) or ownAndCatalogue.")
            .Produces<JsonObject>()
            .ProducesProblem(StatusCodes.Status400BadRequest);
        Add(api, "/dry/time", "How long a coat dries", DryingQuestion.Fields, given => DryingDocument.Of(DryingQuestion.Answer(given)));
    }

    /// <summary>Photons are followed for a second or two; whoever wants more asks the shell.</summary>
    private const long MostPhotons = 10_000_000;

    private static async Task<IResult> Slab(HttpRequest request, TimeProvider time, CancellationToken cancel)
    {
        ThrowIfUnknown(request, [.. SlabQuestion.Fields.Select(field => field.Name)]);
        var slab = SlabQuestion.Read(Given(request));
        var (result, seconds) = await LightWork.RunAsync(slab.Photons, MostPhotons, "light slab", stop => SlabTransport.Of(slab, threads: 1, cancel: stop), time, cancel);
        return Documents.Ok(SlabDocument.Of(slab, result, seconds, threads: 1));
    }

    private static async Task<IResult> Edge(HttpRequest request, TimeProvider time, CancellationToken cancel)
    {
        ThrowIfUnknown(request, [.. EdgeQuestion.Fields.Select(field => field.Name)]);
        var (answer, seconds) = await EdgeForm.FollowAsync(EdgeQuestion.Read(Given(request)), time, cancel);
        return Documents.Ok(EdgeDocument.Of(answer, seconds, threads: 1));
    }

    private static void Add(
        IEndpointRouteBuilder api, string path, string summary, IReadOnlyList<QuestionField> fields, Func<GivenTexts, JsonObject> answer) =>
        api.MapGet(path, (HttpRequest request) =>
            {
                ThrowIfUnknown(request, [.. fields.Select(field => field.Name)]);
                return Documents.Ok(answer(Given(request)));
            })
            .WithSummary(summary)
            .WithDescription(Describe(fields))
            .Produces<JsonObject>()
            .ProducesProblem(StatusCodes.Status400BadRequest);

    /// <summary>For one emulsion of each usual kind, or out of what <c>shelf</c> names: <see cref="AskedShelf"/>.</summary>
    private static async Task<IResult> Choose(HttpRequest request, JobDesk desk, CancellationToken cancel)
    {
        ThrowIfUnknown(request, [.. EmulsionQuestion.Fields.Select(field => field.Name), AskedQuestion.ShelfField]);
        return Documents.Ok(EmulsionAnswerDocument.Of(await AskedQuestion.Of(request.Query).AnswerAsync(desk, cancel)));
    }

    /// <summary>A misspelt name left aside would be an answer to another question; the shell refuses it too.</summary>
    internal static void ThrowIfUnknown(HttpRequest request, IReadOnlyList<string> known)
    {
        var problems = new ProblemList();
        foreach (var name in request.Query.Keys.Where(name => !known.Contains(name, StringComparer.OrdinalIgnoreCase)))
            problems.Add($"'{name}' is no part of this question.", name, $"Ask with {string.Join(", ", known)}.");
        problems.ThrowIfAny();
    }

    internal static string Describe(IReadOnlyList<QuestionField> fields) =>
        string.Join("\n", fields.Select(f => $"{f.Name}: {f.Meaning}, for example {f.Example}."));

    internal static GivenTexts Given(HttpRequest request) =>
        new(request.Query.ToDictionary(q => q.Key, q => q.Value.ToString()));
}
