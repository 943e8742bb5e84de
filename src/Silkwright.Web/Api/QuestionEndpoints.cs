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

    /// <summary>Photons are followed for a second or two; whoever wants more asks the shell.</summary>
    private const long MostPhotons = 10_000_000;

    /// <summary>In thick layers without absorption light wanders for ever.</summary>
    private static readonly TimeSpan LongestSlab = TimeSpan.FromSeconds(20);

    private static async Task<IResult> Slab(HttpRequest request, TimeProvider time, CancellationToken cancel)
    {
        ThrowIfUnknown(request, [.. SlabQuestion.Fields.Select(field => field.Name)]);
        var slab = SlabQuestion.Read(Given(request));
        if (slab.Photons > MostPhotons)
            throw TooMuch($"Ask for {MostPhotons} photons at most");
        using var late = new CancellationTokenSource(LongestSlab, time);
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(cancel, late.Token);
        var begun = time.GetTimestamp();
        try
        {
            var result = await Task.Run(() => SlabTransport.Of(slab, threads: 1, cancel: stop.Token), stop.Token);
            return Documents.Ok(SlabDocument.Of(slab, result, time.GetElapsedTime(begun).TotalSeconds, threads: 1));
        }
        catch (OperationCanceledException) when (late.IsCancellationRequested && !cancel.IsCancellationRequested)
        {
            throw TooMuch("Ask for fewer photons, or for a thinner layer");
        }

        static InputProblemException TooMuch(string remedy) => new(new Problem("So much light keeps everybody else waiting.", "photons", $"{remedy}, or ask the shell: silkwright light slab."));
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
