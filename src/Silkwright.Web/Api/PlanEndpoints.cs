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
            var problems = new ProblemList();
            var job = Read(() => JobReader.Read(Part(body, "job"), "job"), problems);
            var shop = body["shop"] is null ? await desk.ShopAsync(null, cancel) : Read(() => ShopReader.Read(Part(body, "shop"), "shop"), problems);
            foreach (var film in job?.Films ?? [])
                problems.Add($"The film {film} cannot be read from here.", "job: film", "Describe that colour by needs or kind, or save the job with its films at /jobs and ask /api/jobs/ID/plan.");
            problems.ThrowIfAny();
            return Documents.Ok(PlanDocument.Of(Planner.Plan(job!.ToJob(desk.Today, new Dictionary<string, FilmMeasurement>()), shop!)));
        })
        .Accepts<JsonObject>("application/json")
        .WithSummary("The stencil plan of a job")
        .WithDescription("Body: {\"job\": JOB.json, \"shop\": SHOP.json or left out for the shop kept here}.")
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
