using System.Text.Json.Nodes;
using Silkwright.Contracts;
using Silkwright.Gauging;
using Silkwright.Records.Gauging;

namespace Silkwright.Web.Api;

/// <summary>Gauge readings: what a file holds, a study of it, charts, and the readings kept.</summary>
internal static class GaugeEndpoints
{
    private static readonly QuantityField BareMesh = new("bareMesh", QuantityKind.Thickness, "thickness of the bare mesh") { Least = InputLimits.LeastFabricUm, Most = InputLimits.MostFabricUm };

    private const string Body = "Body: a gauge's file as text. In the address: unit (um or mil) where the file tells none, bareMesh where it has no bare readings.";

    public static void Map(IEndpointRouteBuilder api)
    {
        Post(api, "/gauge/read", "What a gauge's file holds: taken, flagged and given back; nothing is kept", (file, _, _) => GaugeReadDocument.Of(file));
        Post(api, "/gauge/study", "How far a gauge repeats and what another hand adds; wanted, as in 0.5um, asks for the readings needed", (file, given, cancel) =>
        {
            var wanted = given.Read(GaugeStudyQuestion.Wanted);
            given.ThrowIfAny();
            return GaugeStudyDocument.Of(GaugeStudyQuestion.Of(file, wanted, cancel));
        });
        Post(api, "/gauge/chart", "Whether the coat has changed, since when, and with what", (file, given, _) =>
            GaugeChartDocument.Of(CoatHistory.Of(ScreenMeans.Of(file.Entries, given.Read(BareMesh)))));
        api.MapGet("/gauge/chart", async (GaugingRecords records, CancellationToken cancel) =>
                Documents.Ok(GaugeChartDocument.Of(CoatHistory.Of(ScreenMeans.Of(await records.EntriesAsync(cancel: cancel))))))
            .WithSummary("The same of the readings kept here")
            .Produces<JsonObject>();
        api.MapPost("/gauge/readings", async (HttpRequest request, GaugingRecords records, CancellationToken cancel) =>
            {
                var (file, _) = await ReadAsync(request, cancel);
                var kept = await records.KeepFileAsync(file, request.Query["source"].ToString() is { Length: > 0 } source ? source : "http", request.Query["by"].ToString(), cancel: cancel);
                var document = GaugeReadDocument.Of(file);
                document["kept"] = kept.New;
                document["keptBefore"] = kept.Before;
                return Documents.Ok(document);
            })
            .Accepts<string>("text/csv")
            .WithSummary("Keeps what is taken of a gauge's file; the same readings again are kept once")
            .WithDescription($"{Body} by, the person's name, must be there; source names the file.")
            .Produces<JsonObject>()
            .ProducesProblem(StatusCodes.Status400BadRequest)
            .DisableAntiforgery();
        api.MapGet("/gauge/readings", async (GaugingRecords records, CancellationToken cancel) => Documents.Ok(KeptReadingsDocument.Of(await records.HistoryAsync(cancel: cancel))))
            .WithSummary("Every reading kept here, withdrawn ones too, and the coats they make as SHOP's readings")
            .Produces<JsonObject>();
        api.MapPost("/gauge/readings/{number:int}/withdraw", async (int number, HttpRequest request, GaugingRecords records, CancellationToken cancel) =>
            {
                var withdrawal = await Withdrawal.ReadAsync(request, cancel);
                await records.WithdrawAsync(number, withdrawal.By, withdrawal.Why, cancel: cancel);
                return Documents.Ok(KeptReadingsDocument.Of(await records.HistoryAsync(cancel: cancel)));
            })
            .WithSummary("Takes a reading back: it stays on record and counts no more")
            .WithDescription(Withdrawal.Described)
            .Produces<JsonObject>()
            .ProducesProblem(StatusCodes.Status400BadRequest)
            .DisableAntiforgery();
    }

    private static void Post(IEndpointRouteBuilder api, string path, string summary, Func<GaugeFile, GivenTexts, CancellationToken, JsonObject> answer) =>
        api.MapPost(path, async (HttpRequest request, CancellationToken cancel) =>
            {
                var (file, given) = await ReadAsync(request, cancel);
                return Documents.Ok(answer(file, given, cancel));
            })
            .Accepts<string>("text/csv")
            .WithSummary(summary)
            .WithDescription(Body)
            .Produces<JsonObject>()
            .ProducesProblem(StatusCodes.Status400BadRequest)
            .DisableAntiforgery();

    private static async Task<(GaugeFile File, GivenTexts Given)> ReadAsync(HttpRequest request, CancellationToken cancel)
    {
        string[] known = ["unit", "by", "source", BareMesh.Name, GaugeStudyQuestion.Wanted.Name];
        var given = new GivenTexts(request.Query.ToDictionary(pair => pair.Key, pair => pair.Value.ToString()));
        foreach (var name in request.Query.Keys.Where(name => !known.Contains(name)))
            given.Problems.Add($"'{name}' is not asked for here.", name, $"Give {string.Join(", ", known)}.");
        string? unit = request.Query["unit"];
        if (unit is not (null or "um" or "mil"))
            given.Problems.Add($"'{unit}' is not a unit taken here.", "unit", "Write um or mil.");
        var bare = given.Read(BareMesh);
        given.ThrowIfAny();
        return (GaugeReader.Read(await Documents.ReadTextAsync(request, cancel), "body", unit, bare), given);
    }
}
