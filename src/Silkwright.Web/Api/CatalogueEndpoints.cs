using System.Text.Json.Nodes;
using Silkwright.Contracts;

namespace Silkwright.Web.Api;

/// <summary>What is known of emulsions: a catalogue's text in, silkwright/catalogue/1 out. Nothing is kept.</summary>
internal static class CatalogueEndpoints
{
    public static void Map(IEndpointRouteBuilder api)
    {
        api.MapPost("/catalogue", async (HttpRequest request, CancellationToken cancel) =>
                Documents.Ok(CatalogueDocument.Of(CatalogueReader.Read(await Documents.ReadTextAsync(request, cancel), "body"))))
            .Accepts<string>("text/csv")
            .WithSummary("Emulsions as data: the value used, other sources, conflicts, and what nobody knows")
            .WithDescription($"Body: text with the columns {string.Join(",", CatalogueReader.Columns)}; GET gives one to fill in.")
            .Produces<JsonObject>()
            .ProducesProblem(StatusCodes.Status400BadRequest)
            .DisableAntiforgery();
        api.MapGet("/catalogue", () => Results.Text(CatalogueTemplate.Text, "text/csv"))
            .WithSummary("A catalogue to fill in")
            .Produces<string>(contentType: "text/csv");
    }
}
