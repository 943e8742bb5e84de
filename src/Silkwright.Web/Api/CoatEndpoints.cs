using System.Text.Json.Nodes;
using Silkwright.Coating.Learning;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Records.Coating;
using Silkwright.Records.Shops;
using Silkwright.Records.Store;

namespace Silkwright.Web.Api;

/// <summary>Coats learnt from readings: tables in a body in, the shell's documents out. Nothing is kept.</summary>
internal static class CoatEndpoints
{
    public static void Map(IEndpointRouteBuilder api)
    {
        Post(api, "/coat/predict", "The thickness each coat of a table will read, learnt from readings",
            "Body: {\"readings\": a table as one text, \"cases\": a table as one text, \"without\": [shops that share nothing]?, \"experience\": [silkwright/coat-experience/1 documents]?}. Columns: docs/engines/coating.md.",
            [BodyField.Text("readings"), BodyField.Text("cases"), BodyField.List("without"), BodyField.Documents("experience")],
            (body, cancel) => CoatDocument.Of(CoatQuestion.Answer(Readings(body), CoatTable.Cases(Table(body, "cases"), "cases"), Names(body, "without"), Experience(body), cancel)));
        Post(api, "/coat/aim", "The shortest strokes for a wanted thickness, with the chance to land and the emulsion it takes",
            $"Body: {{\"readings\": a table as one text?, and as texts {string.Join(", ", CoatAimQuestion.Fields.Select(field => field.Name))}; \"experience\": [silkwright/coat-experience/1 documents]?}}. \"keptShop\": true in place of readings: out of the people, troughs and readings of the shop kept here, as /coat answers.",
            [BodyField.Text("readings"), BodyField.Documents("experience"), BodyField.YesNo("keptShop"), .. CoatAimQuestion.Fields.Select(field => BodyField.Text(field.Name))],
            AimAsync);
        Post(api, "/coat/next", "The coat that, read now, tells most of the coats to come",
            "Body: {\"readings\": a table as one text, \"cases\": a table as one text, \"without\": [shops that share nothing]?, \"experience\": [silkwright/coat-experience/1 documents]?}.",
            [BodyField.Text("readings"), BodyField.Text("cases"), BodyField.List("without"), BodyField.Documents("experience")],
            (body, cancel) => CoatNextDocument.Of(CoatNextQuestion.Answer(Readings(body), CoatTable.Cases(Table(body, "cases"), "cases"), Names(body, "without"), Experience(body), cancel)));
        Post(api, "/coat/experience", "What readings taught of any shop's coats, without the readings, to be given to other shops",
            "Body: {\"readings\": a table as one text?, \"without\": [shops that share nothing]?, \"shop\": SHOP.json in place of readings?, \"experience\": [documents to add up]?}.",
            [BodyField.Text("readings"), BodyField.List("without"), BodyField.Object("shop"), BodyField.Documents("experience")],
            (body, cancel) => CoatExperienceDocument.Of(ExperienceOf(body, cancel).Experience));
        api.MapGet("/coat/experience", async (SilkwrightStore store, CancellationToken cancel) =>
            {
                var shop = await store.Shops.CurrentAsync(cancel: cancel) ?? throw new InputProblemException(ShopRecords.NoShop(null));
                return Documents.Ok(CoatExperienceDocument.Of(CoatExperienceQuestion.Of(await KeptShop.OfAsync(store, shop, cancel), [], cancel).Experience));
            })
            .WithSummary("What the readings of the shop kept here taught, for other shops")
            .Produces<JsonObject>()
            .ProducesProblem(StatusCodes.Status400BadRequest);
        api.MapGet("/coat/experience/kept", async (ExperienceRecords records, CancellationToken cancel) => Documents.Ok(KeptExperienceDocument.Of(await records.HistoryAsync(cancel: cancel))))
            .WithSummary("Other shops' experience that the shop kept here has taken in, withdrawn entries too")
            .Produces<JsonObject>();
        api.MapPost("/coat/experience/kept", async (HttpRequest request, ExperienceRecords records, CancellationToken cancel) =>
            {
                _ = await records.KeepAsync(await Documents.ReadTextAsync(request, cancel), request.Query["source"].ToString() is { Length: > 0 } source ? source : "http", request.Query["by"].ToString(), cancel: cancel);
                return Documents.Ok(KeptExperienceDocument.Of(await records.HistoryAsync(cancel: cancel)));
            })
            .Accepts<JsonObject>("application/json")
            .WithSummary("Takes in what other shops' readings taught; the same again is kept once")
            .WithDescription("Body: silkwright/coat-experience/1. In the address: by, the person's name, and source, the file's.")
            .Produces<JsonObject>()
            .ProducesProblem(StatusCodes.Status400BadRequest)
            .DisableAntiforgery();
        api.MapPost("/coat/experience/kept/{number:int}/withdraw", async (int number, HttpRequest request, ExperienceRecords records, CancellationToken cancel) =>
            {
                var withdrawal = await Withdrawal.ReadAsync(request, cancel);
                await records.WithdrawAsync(number, withdrawal.By, withdrawal.Why, cancel: cancel);
                return Documents.Ok(KeptExperienceDocument.Of(await records.HistoryAsync(cancel: cancel)));
            })
            .WithSummary("Takes such experience back: it stays on record and teaches no more")
            .WithDescription(Withdrawal.Described)
            .Produces<JsonObject>()
            .ProducesProblem(StatusCodes.Status400BadRequest)
            .DisableAntiforgery();
        Post(api, "/coat/readings", "How many readings bring their mean as near as is wanted",
            "Body: {\"readings\": a table as one text, \"wanted\": \"2um\"}.",
            [BodyField.Text("readings"), BodyField.Text("wanted")],
            (body, cancel) => CoatReadingsDocument.Of(CoatReadingsQuestion.Answer(Readings(body), WantedUm(body), cancel)));
    }

    private static IReadOnlyList<CoatRow> Readings(JsonObject body) => CoatTable.Readings(Table(body, "readings"), "readings");

    private static string Table(JsonObject body, string name) =>
        Documents.Text(body, name) ?? throw new InputProblemException(new Problem($"There are no {name}.", name, "Send the table's text as one JSON string."));

    private static GivenTexts Given(JsonObject body) => new(
        CoatAimQuestion.Fields.Select(field => (field.Name, Text: Documents.Text(body, field.Name))).Where(pair => pair.Text is not null).ToDictionary(pair => pair.Name, pair => pair.Text!));

    private static double WantedUm(JsonObject body)
    {
        var problems = new ProblemList();
        var um = QuantityText.Read(Documents.Text(body, "wanted") ?? "", QuantityKind.Thickness, "wanted", problems);
        problems.ThrowIfAny();
        return um!.Value;
    }

    private static string[] Names(JsonObject body, string name)
    {
        if (body[name] is null)
            return [];
        if (body[name] is JsonArray list && list.All(entry => entry is JsonValue value && value.TryGetValue<string>(out _)))
            return [.. list.Select(entry => entry!.GetValue<string>())];
        throw new InputProblemException(new Problem("This must be a list of names.", name, "Write it as [\"one shop\", \"another\"]."));
    }

    private static async Task<JsonObject> AimAsync(JsonObject body, SilkwrightStore store, CancellationToken cancel)
    {
        if (body["keptShop"] is not JsonValue kept || !kept.TryGetValue<bool>(out var asked) || !asked)
            return CoatAimDocument.Of(CoatAimQuestion.Answer(Given(body), body["readings"] is null ? [] : Readings(body), Experience(body), cancel));
        if (body["readings"] is not null || body["experience"] is not null || body["shop"] is not null)
            throw new InputProblemException(new Problem("Another shop's readings are there beside the kept shop.", "keptShop", "Leave keptShop out, or readings, experience and shop."));
        var shop = await store.Shops.CurrentAsync(cancel: cancel) ?? throw new InputProblemException(ShopRecords.NoShop(null));
        return CoatAimDocument.Of(CoatAimQuestion.Of(Given(body), await KeptShop.OfAsync(store, shop, cancel)));
    }

    private static CoatExperienceAnswer ExperienceOf(JsonObject body, CancellationToken cancel)
    {
        if (body["shop"] is null)
            return CoatExperienceQuestion.Answer(body["readings"] is null ? null : Readings(body), Names(body, "without"), Experiences(body), cancel);
        return body["readings"] is null && body["without"] is null
            ? CoatExperienceQuestion.Of(ShopReader.Read(body["shop"]!.ToJsonString(), "shop"), Experiences(body), cancel)
            : throw new InputProblemException(new Problem("Readings are there beside a shop.", "shop", "Send one of the two; add the other's experience up afterwards."));
    }

    /// <summary>What other shops' readings taught, where a body brings it.</summary>
    internal static CoatExperience? Experience(JsonObject body) => CoatExperienceQuestion.Together(Experiences(body));

    private static (string Where, CoatExperience Experience)[] Experiences(JsonObject body) => body["experience"] switch
    {
        null => [],
        JsonArray list => [.. list.Select((one, i) => ($"experience[{i}]", CoatExperienceReader.Read(one?.ToJsonString() ?? "null", $"experience[{i}]")))],
        var one => [("experience", CoatExperienceReader.Read(one.ToJsonString(), "experience"))],
    };

    private static void Post(IEndpointRouteBuilder api, string path, string summary, string description, IReadOnlyList<BodyField> known, Func<JsonObject, CancellationToken, JsonObject> answer) =>
        Post(api, path, summary, description, known, (body, _, cancel) => Task.Run(() => answer(body, cancel), cancel));

    private static void Post(IEndpointRouteBuilder api, string path, string summary, string description, IReadOnlyList<BodyField> known, Func<JsonObject, SilkwrightStore, CancellationToken, Task<JsonObject>> answer) => api
        .MapPost(path, async (HttpRequest request, SilkwrightStore store, CancellationToken cancel) =>
        {
            var body = await Documents.ReadAsync(request, cancel);
            Documents.TakeOnly(body, known);
            return Documents.Ok(await answer(body, store, cancel));
        })
        .Accepts<JsonObject>("application/json")
        .WithSummary(summary)
        .WithDescription(description)
        .Produces<JsonObject>()
        .ProducesProblem(StatusCodes.Status400BadRequest)
        .DisableAntiforgery();
}
