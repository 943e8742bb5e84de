using System.Globalization;
using System.Text.Json.Nodes;
using Silkwright.Estimates;
using Silkwright.Gauging;

namespace Silkwright.Contracts;

/// <summary>A gauge's file as other programs read it: silkwright/gauge-read/1, docs/schema/gauge-read.json.</summary>
public static class GaugeReadDocument
{
    public static JsonObject Of(GaugeFile file)
    {
        var document = DocumentJson.Start("gauge-read");
        Add(document, file);
        document["entries"] = new JsonArray([.. file.Entries.Select(entry => (JsonNode)Of(entry))]);
        document["readings"] = new JsonObject { ["coat"] = CoatReadings(ScreenMeans.Of(file.Entries), file.Entries) };
        document["notes"] = DocumentJson.Of(file.Notes);
        return document;
    }

    /// <summary>What was taken, flagged and given back.</summary>
    internal static void Add(JsonObject document, GaugeFile file)
    {
        document["taken"] = file.Entries.Count;
        document["flagged"] = new JsonArray([.. file.Flagged.Select(flag => (JsonNode)Of(flag.Line, flag.Problem))]);
        document["refused"] = new JsonArray([.. file.Refused.Select(row =>
        {
            var entry = new JsonObject { ["line"] = row.Line, ["fields"] = DocumentJson.Of(row.Fields) };
            entry["problems"] = new JsonArray([.. row.Problems.Select(problem => (JsonNode)Of(row.Line, problem))]);
            return (JsonNode)entry;
        })]);
        document.AddIfThere("refusedText", file.Refused.Count > 0 ? file.RefusedText : null);
    }

    public static JsonObject Of(GaugeEntry entry)
    {
        var node = new JsonObject();
        node.AddIfThere("line", entry.Line > 0 ? entry.Line : null);
        node.AddIfThere("coatedUm", entry.CoatedUm);
        node.AddIfThere("bareUm", entry.BareUm);
        node.AddIfThere("eomUm", entry.OverMeshUm);
        node.AddIfThere("screen", entry.Screen);
        node.AddIfThere("place", entry.Place);
        node.AddIfThere("operator", entry.Operator);
        node.AddIfThere("trough", entry.Trough);
        node.AddIfThere("emulsion", entry.Emulsion);
        node.AddIfThere("lot", entry.Lot);
        node.AddIfThere("countPerCm", entry.MeshCountPerCm);
        node.AddIfThere("threadUm", entry.ThreadUm);
        node.AddIfThere("strokes", entry.Strokes);
        node.AddIfThere("on", entry.On?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        return node;
    }

    /// <summary>SHOP's <c>readings.coat</c>: a coat each, of those whose emulsion, mesh and strokes were told.</summary>
    public static JsonArray CoatReadings(IReadOnlyList<CoatedReading> coats, IReadOnlyList<GaugeEntry> entries)
    {
        var made = entries.Where(entry => entry is { MeshCountPerCm: not null, ThreadUm: not null, Strokes: not null })
            .GroupBy(entry => entry.Recipe).ToDictionary(recipe => recipe.Key, recipe => recipe.First());
        return new JsonArray([.. coats.Where(coat => coat.Emulsion is not null && coat.EomUm >= 0 && made.ContainsKey(coat.Recipe)).Select(coat =>
        {
            var how = made[coat.Recipe];
            var node = new JsonObject
            {
                ["emulsion"] = coat.Emulsion,
                ["mesh"] = new JsonObject { ["countPerCm"] = how.MeshCountPerCm, ["threadUm"] = how.ThreadUm },
                ["strokes"] = how.Strokes,
            };
            node.AddIfThere("trough", coat.Trough);
            node["eomUm"] = Math.Round(coat.EomUm, 2);
            node["on"] = coat.On.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
            return (JsonNode)node;
        })]);
    }

    private static JsonObject Of(int line, Problem problem) => new() { ["line"] = line, ["what"] = problem.What, ["where"] = problem.Where, ["remedy"] = problem.Remedy };
}
