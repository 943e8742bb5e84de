using System.Text.Json;
using System.Text.Json.Nodes;
using Silkwright.Artwork;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Plans;
using Silkwright.Web.Jobs;

namespace Silkwright.Web.Api;

/// <summary>The main job over HTTP: a job and, if one likes, a shop in; silkwright/plan/1 out. Nothing is kept.</summary>
internal static class PlanEndpoints
{
    public static void Map(IEndpointRouteBuilder api) => api
        .MapPost("/plan", async (HttpRequest request, JobDesk desk, CancellationToken cancel) =>
        {
            var body = await Documents.ReadAsync(request, cancel);
            Documents.TakeOnly(body, BodyField.Object("job"), BodyField.Object("shop"), BodyField.Text("catalogue"), BodyField.YesNo("keptCatalogue"), BodyField.Documents("experience"));
            var problems = new ProblemList();
            var job = Read(() => JobReader.Read(Part(body, "job"), "job"), problems);
            var shop = body["shop"] is null ? null : Read(() => ShopReader.Read(Part(body, "shop"), "shop"), problems);
            var catalogue = Documents.Text(body, "catalogue") is { } text ? Read(() => CatalogueReader.Read(text, "catalogue"), problems) : null;
            var keptAsked = body["keptCatalogue"]?.GetValueKind() == JsonValueKind.True;
            if (keptAsked && body["catalogue"] is not null)
                problems.Add("Two catalogues are asked for.", "catalogue, keptCatalogue", "Keep one of the two.");
            var taught = body["experience"] is null ? null : Read(() => CoatEndpoints.Experience(body)!, problems);
            foreach (var film in job?.Films ?? [])
                problems.Add($"The film {film} cannot be read from here.", "job: film", "Describe that colour by needs or kind, or save the job with its films at /jobs and ask /api/jobs/ID/plan.");
            problems.ThrowIfAny();
            var (known, notes) = await desk.KnownShopAsync(shop, catalogue, keptAsked, cancel);
            var plan = Planner.Plan(job!.ToJob(desk.Today, new Dictionary<string, FilmMeasurement>()), taught is null ? known : CoatExperienceQuestion.Beside(known, taught));
            return Documents.Ok(PlanDocument.Of(plan with { Notes = [.. notes, .. plan.Notes] }));
        })
        .Accepts<JsonObject>("application/json")
        .WithSummary("The stencil plan of a job")
        .WithDescription("Body: {\"job\": JOB.json, \"shop\": SHOP.json or left out for the shop kept here, \"catalogue\"?: a catalogue's text, \"keptCatalogue\"?: true, \"experience\"?: [silkwright/coat-experience/1 documents, in place of what the kept shop took in]}. A catalogue's emulsions are weighed beside the shop's.")
        .Produces<JsonObject>()
        .ProducesProblem(StatusCodes.Status400BadRequest)
        .DisableAntiforgery();

    private static string Part(JsonObject body, string name) => (body[name] ?? new JsonObject()).ToJsonString();

    private static T? Read<T>(Func<T> read, ProblemList problems)
        where T : class
    {
        try
        {
            return read();
        }
        catch (InputProblemException fault)
        {
            problems.AddRange(fault.Problems);
            return null;
        }
    }
}
