using System.Text.Json.Nodes;
using Silkwright.Estimates;
using Silkwright.Scheduling.Shelf;
using Silkwright.Web.Jobs;
using Silkwright.Web.Questions;

namespace Silkwright.Web.Api;

/// <summary>Which few emulsions to keep: a case, or the shop's own jobs, in; silkwright/shelf/1 out. Nothing is kept.</summary>
internal static class ShelfEndpoints
{
    public static void Map(IEndpointRouteBuilder api)
    {
        api.MapPost("/shelf", async (HttpRequest request, TimeProvider time, CancellationToken cancel) =>
            {
                var shelf = ShelfReader.Read((await Documents.ReadAsync(request, cancel)).ToJsonString(), "body");
                var answer = await Task.Run(() => ShelfChoice.Of(shelf, time, null, cancel), cancel);
                return Documents.Ok(ShelfDocument.Of(answer));
            })
            .Accepts<JsonObject>("application/json")
            .WithSummary("The few emulsions to keep, and which job to make with which")
            .WithDescription("Body: CASE.json, as docs/schema/shelf-case.json has it.")
            .Produces<JsonObject>()
            .ProducesProblem(StatusCodes.Status400BadRequest)
            .DisableAntiforgery();

        api.MapGet("/shelf", async (HttpRequest request, JobDesk desk, CancellationToken cancel) =>
            {
                var (_, answer, leftOut) = await desk.ShelfAsync(AskedQuestion.Of(request.Query).WithCatalogue(), cancel);
                var films = leftOut.Select(job => new Note($"{job} is left out: its films are not measured yet."));
                return Documents.Ok(ShelfDocument.Of(answer with { Notes = [.. answer.Notes, .. films] }));
            })
            .WithSummary("The few emulsions this shop should keep for the jobs it has kept here, month by month")
            .WithDescription("In the address: shelf=ownAndCatalogue weighs the kept catalogue's emulsions as ones to try.")
            .Produces<JsonObject>()
            .ProducesProblem(StatusCodes.Status400BadRequest);
    }
}
