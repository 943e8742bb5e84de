using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Mesh;
using Silkwright.Records.Screens;

namespace Silkwright.Web.Api;

/// <summary>The append-only record of screens.</summary>
internal static class ScreenEndpoints
{
    private static readonly BodyField[] Screen =
    [
        BodyField.Text("frame"),
        BodyField.Object("mesh", BodyField.Number("countPerCm"), BodyField.Number("threadUm"), BodyField.YesNo("dyed"), BodyField.Number("tensionNPerCm")),
        BodyField.Text("meshLot"),
        BodyField.Text("person"),
        BodyField.Text("idempotencyKey"),
    ];

    private static readonly BodyField[] EntryFields =
    [
        BodyField.Object("fact"), BodyField.Text("person"), BodyField.Text("at"), BodyField.Text("note"), BodyField.Number("corrects"), BodyField.Text("why"), BodyField.Text("idempotencyKey"),
    ];

    public static void Map(IEndpointRouteBuilder api)
    {
        _ = api.MapGet("/screens", async (ScreenRecords screens, CancellationToken cancel) =>
                Documents.Ok(new JsonObject
                {
                    ["schema"] = "silkwright/screens/1",
                    ["screens"] = new JsonArray([.. (await screens.ListAsync(cancel: cancel)).Select(ScreenDocument.Of)]),
                }))
            .WithSummary("Every screen and its record").Produces<JsonObject>();
        _ = api.MapGet("/screens/{id}", async (string id, ScreenRecords screens, CancellationToken cancel) =>
                await screens.FindAsync(id, cancel) is { } record
                    ? Documents.Ok(ScreenDocument.Of(record))
                    : ProblemDocument.Unknown("No screen has this id.", $"screen {id}", "See /api/screens for the screens there are."))
            .WithSummary("A screen and its record").Produces<JsonObject>().ProducesProblem(StatusCodes.Status404NotFound);
        _ = api.MapPost("/screens", async (HttpRequest request, ScreenRecords screens, CancellationToken cancel) =>
            {
                var body = await Documents.ReadAsync(request, cancel);
                Documents.TakeOnly(body, Screen);
                var screen = await screens.AddAsync(Draft(body), cancel);
                return Documents.Ok(ScreenDocument.Of(await screens.ShowAsync(screen.Id, cancel)));
            })
            .WithSummary("Puts a screen on record")
            .WithDescription("Body: {\"frame\", \"mesh\": {\"countPerCm\", \"threadUm\", \"dyed\"?, \"tensionNPerCm\"?}, \"meshLot\"?, \"person\", \"idempotencyKey\"?}.")
            .Accepts<JsonObject>("application/json").Produces<JsonObject>().ProducesProblem(StatusCodes.Status400BadRequest).DisableAntiforgery();
        _ = api.MapPost("/screens/{id}/entries", async (string id, HttpRequest request, ScreenRecords screens, CancellationToken cancel) =>
            {
                var body = await Documents.ReadAsync(request, cancel);
                Documents.TakeOnly(body, EntryFields);
                _ = await screens.AppendAsync(id, Entry(body), cancel);
                return Documents.Ok(ScreenDocument.Of(await screens.ShowAsync(id, cancel)));
            })
            .WithSummary("Writes an entry into a screen's record")
            .WithDescription("Body: {\"fact\": {\"kind\": ..}, \"person\", \"at\"?, \"note\"?, \"corrects\"?, \"why\"?, \"idempotencyKey\"?}.")
            .Accepts<JsonObject>("application/json").Produces<JsonObject>().ProducesProblem(StatusCodes.Status400BadRequest).DisableAntiforgery();
    }

    private static ScreenDraft Draft(JsonObject body)
    {
        var problems = new ProblemList();
        var mesh = body["mesh"] as JsonObject ?? [];
        var draft = new ScreenDraft
        {
            Frame = Documents.Text(body, "frame") ?? "",
            Mesh = new MeshFabric(Number(mesh, "countPerCm", problems) ?? 0, Number(mesh, "threadUm", problems) ?? 0, mesh["dyed"]?.GetValueKind() == JsonValueKind.True)
            {
                TensionNPerCm = Number(mesh, "tensionNPerCm", problems),
            },
            MeshLot = Documents.Text(body, "meshLot"),
            Person = Documents.Text(body, "person") ?? "",
            IdempotencyKey = Documents.Text(body, "idempotencyKey"),
        };
        problems.ThrowIfAny();
        return draft;
    }

    private static EntryDraft Entry(JsonObject body)
    {
        var problems = new ProblemList();
        ScreenFact? fact = null;
        try
        {
            fact = FactJson.Read((body["fact"] ?? new JsonObject()).ToJsonString());
            IReadOnlyList<string> known = FactJson.FieldsOf(fact);
            foreach (var (name, _) in body["fact"]!.AsObject().Where(field => !known.Contains(field.Key, StringComparer.OrdinalIgnoreCase)))
                problems.Add($"There is no field '{NearName.Shown(name)}'.", "fact", NearName.Remedy(name, known));
        }
        catch (Exception fault) when (fault is JsonException or NotSupportedException)
        {
            problems.Add("The fact cannot be read.", "fact", "Give its kind and that kind's fields: {\"kind\": \"printed\", \"impressions\": 600}.");
        }

        DateTimeOffset? at = null;
        if (Documents.Text(body, "at") is { } text)
        {
            if (DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var read))
                at = read;
            else
                problems.Add($"'{text}' is not a time.", "at", "Write it as 2026-11-25T14:05:00Z.");
        }

        var corrects = Number(body, "corrects", problems);
        if (corrects is { } sequence && (sequence < 1 || sequence > int.MaxValue || sequence != Math.Floor(sequence)))
            problems.Add("There is no such entry number.", "corrects", "Give the number of one of the screen's entries.");
        problems.ThrowIfAny();
        return new EntryDraft
        {
            Fact = fact!,
            At = at,
            Person = Documents.Text(body, "person") ?? "",
            Note = Documents.Text(body, "note"),
            IdempotencyKey = Documents.Text(body, "idempotencyKey"),
            Corrects = (int?)corrects,
            Why = Documents.Text(body, "why"),
        };
    }

    private static double? Number(JsonObject body, string name, ProblemList problems)
    {
        if (body[name] is not { } node)
            return null;
        if (node is JsonValue value && value.TryGetValue<double>(out var number) && double.IsFinite(number))
            return number;
        problems.Add($"{name} is not a number.", name, "Write a plain JSON number.");
        return null;
    }
}
