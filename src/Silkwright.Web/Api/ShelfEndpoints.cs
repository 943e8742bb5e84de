using System.Text.Json.Nodes;
using Silkwright.Scheduling.Shelf;

namespace Silkwright.Web.Api;

/// <summary>Which few emulsions to keep: a case in, silkwright/shelf/1 out. Nothing is kept.</summary>
internal static class ShelfEndpoints
{
    public static void Map(IEndpointRouteBuilder api) => api
        .MapPost("/shelf", async (HttpRequest request, TimeProvider time, CancellationToken cancel) =>
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
}
