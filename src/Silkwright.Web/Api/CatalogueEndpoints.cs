using System.Globalization;
using System.Text.Json.Nodes;
using Silkwright.Catalogue;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Records.Catalogues;

namespace Silkwright.Web.Api;

/// <summary>What is known of emulsions: POST checks a catalogue's text, PUT keeps it, GET gives the kept one.</summary>
internal static class CatalogueEndpoints
{
    private static readonly string Body = $"Body: text with the columns {string.Join(",", CatalogueReader.Columns)}; /api/catalogue/template is one to fill in.";

    public static void Map(IEndpointRouteBuilder api)
    {
        api.MapPost("/catalogue", async (HttpRequest request, CatalogueRecords records, CancellationToken cancel) =>
            {
                var catalogue = await ReadAsync(request, cancel);
                return Documents.Ok(WithChanges(CatalogueDocument.Of(catalogue), await records.CurrentAsync(cancel), catalogue));
            })
            .Accepts<string>("text/csv")
            .WithSummary("Emulsions as data: the value used, other sources, conflicts, and what nobody knows")
            .WithDescription($"{Body} It is held against the kept one, and not kept.")
            .Produces<JsonObject>()
            .ProducesProblem(StatusCodes.Status400BadRequest)
            .DisableAntiforgery();
        api.MapPut("/catalogue", async (HttpRequest request, CatalogueRecords records, CancellationToken cancel) =>
            {
                var basedOn = BasedOn(request.Query["basedOn"]);
                var catalogue = await ReadAsync(request, cancel);
                var before = await records.CurrentAsync(cancel);
                var revision = await records.SaveAsync(catalogue, request.Query["by"].ToString(), basedOn, cancel);
                return Documents.Ok(WithChanges(KeptCatalogueDocument.Of(new KeptCatalogue(revision, catalogue)), before, catalogue));
            })
            .Accepts<string>("text/csv")
            .WithSummary("Keeps a catalogue in place of the one before")
            .WithDescription($"{Body} In the address: by, the person's name; basedOn, the revision seen before, to be refused where another has come since.")
            .Produces<JsonObject>()
            .ProducesProblem(StatusCodes.Status400BadRequest)
            .DisableAntiforgery();
        api.MapGet("/catalogue", async (CatalogueRecords records, CancellationToken cancel) =>
                await records.CurrentAsync(cancel) is { } kept ? Documents.Ok(KeptCatalogueDocument.Of(kept)) : NoneKept())
            .WithSummary("The kept catalogue, with who kept it and when")
            .Produces<JsonObject>()
            .ProducesProblem(StatusCodes.Status404NotFound);
        api.MapGet("/catalogue/text", async (CatalogueRecords records, CancellationToken cancel) =>
                await records.CurrentAsync(cancel) is { } kept ? Results.Text(kept.Revision.Text, "text/csv") : NoneKept())
            .WithSummary("The kept catalogue as text, to be changed and sent back")
            .Produces<string>(contentType: "text/csv")
            .ProducesProblem(StatusCodes.Status404NotFound);
        api.MapGet("/catalogue/template", () => Results.Text(CatalogueTemplate.Text, "text/csv"))
            .WithSummary("A catalogue to fill in")
            .Produces<string>(contentType: "text/csv");
    }

    private static async Task<EmulsionCatalogue> ReadAsync(HttpRequest request, CancellationToken cancel) =>
        CatalogueReader.Read(await Documents.ReadTextAsync(request, cancel), "body");

    private static JsonObject WithChanges(JsonObject document, KeptCatalogue? before, EmulsionCatalogue after)
    {
        document["changes"] = CatalogueChangesDocument.Of(CatalogueDifference.Between(before?.Catalogue, after), after);
        return document;
    }

    private static IResult NoneKept() =>
        ProblemDocument.Unknown("No catalogue is kept here yet.", "/api/catalogue", "PUT one here with ?by=NAME, or keep one at /shop/catalogue.");

    private static int? BasedOn(string? text)
    {
        if (string.IsNullOrEmpty(text))
            return null;
        return int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var revision)
            ? revision
            : throw new InputProblemException(new Problem("This is no revision's number.", "basedOn", "Give kept.revision of GET /api/catalogue, 0 where there was none, or leave it out."));
    }
}
