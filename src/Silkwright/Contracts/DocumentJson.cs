using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>How values become JSON in every document.</summary>
public static class DocumentJson
{
    /// <summary>Indented, with letters such as µ and ² kept readable.</summary>
    public static JsonSerializerOptions Options { get; } = new()
    {
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>A document's head.</summary>
    public static JsonObject Start(string verb) => new() { ["schema"] = $"silkwright/{verb}/1" };

    /// <summary>An estimate: value, interval, cover and ground.</summary>
    public static JsonObject Of(Estimate estimate) => new()
    {
        ["value"] = estimate.Value,
        ["low"] = estimate.Low,
        ["high"] = estimate.High,
        ["coverPercent"] = estimate.CoverPercent,
        ["ground"] = Names.Of(estimate.Ground),
    };

    public static JsonArray Of(IEnumerable<Note> notes) => new([.. notes.Select(note =>
    {
        var entry = new JsonObject { ["text"] = note.Text };
        entry.AddIfThere("ground", note.Ground is { } ground ? Names.Of(ground) : null);
        return (JsonNode)entry;
    })]);

    public static JsonArray Of(IEnumerable<Caution> cautions) => new([.. cautions.Select(caution => (JsonNode)new JsonObject
    {
        ["step"] = caution.Step,
        ["level"] = Names.Of(caution.Level),
        ["text"] = caution.Text,
    })]);

    public static JsonArray Of(IEnumerable<string> texts) => new([.. texts.Select(text => (JsonNode?)JsonValue.Create(text))]);

    /// <summary>The same with a field more, where there is something to say.</summary>
    public static JsonObject With(this JsonObject document, string name, JsonNode? value)
    {
        document.AddIfThere(name, value);
        return document;
    }

    /// <summary>Adds a field only where there is something to say; a missing value is left out, never null.</summary>
    public static void AddIfThere(this JsonObject document, string name, JsonNode? value)
    {
        if (value is not null)
            document[name] = value;
    }
}
