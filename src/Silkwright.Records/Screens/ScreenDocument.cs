using System.Text.Json;
using System.Text.Json.Nodes;

namespace Silkwright.Records.Screens;

/// <summary>A screen's record as other programs read it: silkwright/screen/1, docs/schema/screen.json.</summary>
public static class ScreenDocument
{
    public static JsonObject Of(ScreenRecord record)
    {
        var (screen, events, story) = record;
        var holding = story.Entries.Select(e => e.Entry.Sequence).ToHashSet();
        return Trim(new JsonObject
        {
            ["schema"] = "silkwright/screen/1",
            ["id"] = screen.Id,
            ["shop"] = screen.ShopKey,
            ["frame"] = screen.Frame,
            ["mesh"] = Trim(new JsonObject
            {
                ["countPerCm"] = screen.MeshCountPerCm,
                ["threadUm"] = screen.MeshThreadUm,
                ["dyed"] = screen.MeshDyed,
                ["lot"] = screen.MeshLot,
            }),
            ["tensionNPerCm"] = story.TensionNPerCm ?? screen.TensionNPerCm,
            ["stage"] = Text(story.Stage),
            ["impressions"] = story.Impressions,
            ["dryMinutes"] = story.DryMinutes,
            ["coat"] = Fact(story.Coat),
            ["exposure"] = Fact(story.Exposure),
            ["check"] = Fact(story.Check),
            ["job"] = Fact(story.Job),
            ["end"] = Fact(story.End),
            ["longWaits"] = new JsonArray([.. story.LongWaits.Select(Wait)]),
            ["entries"] = new JsonArray([.. events.Select(e => Entry(e, holding.Contains(e.Sequence)))]),
        });
    }

    /// <summary>One entry.</summary>
    /// <param name="entry">As it was written.</param>
    /// <param name="holds">No later entry has corrected or withdrawn it.</param>
    public static JsonObject Entry(ScreenEvent entry, bool holds)
    {
        var written = Trim(new JsonObject
        {
            ["sequence"] = entry.Sequence,
            ["kind"] = Text(entry.Kind),
            ["at"] = entry.At,
            ["recordedAt"] = entry.RecordedAt,
            ["person"] = entry.Person,
            ["note"] = entry.Note,
            ["corrects"] = entry.Corrects,
            ["why"] = entry.Why,
            ["holds"] = holds,
        });
        foreach (var (name, value) in Fact(entry.Fact)!.AsObject())
            written[name] = value?.DeepClone();
        return written;
    }

    private static JsonObject Wait(LongWait wait) => new()
    {
        ["after"] = Text(wait.After),
        ["before"] = Text(wait.Before),
        ["minutes"] = wait.Minutes,
        ["limitMinutes"] = wait.LimitMinutes,
        ["ground"] = Text(wait.Ground),
        ["over"] = wait.Over,
    };

    private static JsonNode? Fact(ScreenFact? fact) =>
        fact is null ? null : JsonSerializer.SerializeToNode(fact, FactJson.Options);

    private static string Text<T>(T value)
        where T : struct, Enum => JsonNamingPolicy.CamelCase.ConvertName(value.ToString());

    // A value that cannot be had is left out.
    private static JsonObject Trim(JsonObject json)
    {
        foreach (var missing in json.Where(p => p.Value is null).Select(p => p.Key).ToList())
            _ = json.Remove(missing);
        return json;
    }
}
