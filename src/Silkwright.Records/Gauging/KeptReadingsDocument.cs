using System.Globalization;
using System.Text.Json.Nodes;
using Silkwright.Contracts;
using Silkwright.Gauging;

namespace Silkwright.Records.Gauging;

/// <summary>The readings of a shop's records as other programs read them: silkwright/gauge-readings/1, docs/schema/gauge-readings.json.</summary>
public static class KeptReadingsDocument
{
    public static JsonObject Of(IReadOnlyList<KeptReading> history)
    {
        var withdrawn = history.Where(entry => entry.Withdraws is not null).ToDictionary(entry => entry.Withdraws!.Value, entry => entry.Why);
        GaugeEntry[] hold = [.. history.Where(entry => !withdrawn.ContainsKey(entry.Number)).Select(entry => entry.Reading).OfType<GaugeEntry>()];
        var document = DocumentJson.Start("gauge-readings");
        document["entries"] = new JsonArray([.. history.Where(entry => entry.Reading is not null).Select(entry =>
        {
            var node = GaugeReadDocument.Of(entry.Reading!);
            node["number"] = entry.Number;
            node["source"] = entry.Source;
            node["recordedBy"] = entry.RecordedBy;
            node["recordedAt"] = entry.RecordedAt.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture);
            node.AddIfThere("flag", entry.Flag);
            node.AddIfThere("withdrawnBecause", withdrawn.GetValueOrDefault(entry.Number));
            return (JsonNode)node;
        })]);
        document["readings"] = new JsonObject { ["coat"] = GaugeReadDocument.CoatReadings(ScreenMeans.Of(hold), hold) };
        return document;
    }
}
