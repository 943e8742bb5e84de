using System.Text.Json.Nodes;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Records.Jobs;
using Silkwright.Web.Jobs;

namespace Silkwright.Web.Api;

/// <summary>The jobs kept here and their plans.</summary>
internal static class JobEndpoints
{
    public static void Map(IEndpointRouteBuilder api)
    {
        _ = api.MapGet("/jobs", async (JobRecords jobs, CancellationToken cancel) =>
                Documents.Ok(new JsonObject
                {
                    ["schema"] = "silkwright/jobs/1",
                    ["jobs"] = new JsonArray([.. (await jobs.ListAsync(cancel: cancel)).Select(Entry)]),
                }))
            .WithSummary("The jobs, the earliest due first").Produces<JsonObject>();
        _ = api.MapPost("/jobs", async (HttpRequest request, JobRecords jobs, TimeProvider time, CancellationToken cancel) =>
            {
                var body = await Documents.ReadAsync(request, cancel);
                Documents.TakeOnly(body, BodyField.Object("job"), BodyField.Text("person"), BodyField.Text("id"), BodyField.Text("why"));
                var job = JobReader.Read((body["job"] ?? new JsonObject()).ToJsonString(), "job");
                var text = JobWriter.Write(job);
                var id = Documents.Text(body, "id") ?? await JobKey.FreeAsync(jobs, job.Name, text, time.GetUtcNow(), cancel);
                var saved = await jobs.SaveAsync(id, text, Documents.Text(body, "person") ?? "", Documents.Text(body, "why") ?? "saved over HTTP", cancel: cancel);
                return Documents.Ok(Entry(saved));
            })
            .WithSummary("Saves a job").WithDescription("Body: {\"job\": JOB.json, \"person\": name, \"id\"?, \"why\"?}.")
            .Accepts<JsonObject>("application/json").Produces<JsonObject>().ProducesProblem(StatusCodes.Status400BadRequest).DisableAntiforgery();
        _ = api.MapGet("/jobs/{id}/plan", async (string id, JobDesk desk, CancellationToken cancel) =>
            {
                if (await desk.SeeAsync(id, cancel) is not { } sight)
                    return ProblemDocument.Unknown("No job has this id.", $"job {id}", "See /api/jobs for the jobs there are.");
                if (sight.Plan is { } plan)
                    return Documents.Ok(PlanDocument.Of(plan));
                throw new InputProblemException(sight.Problems.Count > 0
                    ? sight.Problems
                    : [new Problem("The job's films are still being measured.", $"job {id}", $"Ask again; /jobs/{id}/progress says how far it is.")]);
            })
            .WithSummary("The stencil plan of a kept job").Produces<JsonObject>().ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status404NotFound);
    }

    private static JsonObject Entry(JobRevision job)
    {
        var entry = new JsonObject
        {
            ["id"] = job.JobId,
            ["name"] = job.Name,
            ["revision"] = job.Revision,
            ["state"] = Names.Of(job.State),
            ["savedBy"] = job.SavedBy,
        };
        entry.AddIfThere("dueDate", job.DueDate?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
        return entry;
    }
}
