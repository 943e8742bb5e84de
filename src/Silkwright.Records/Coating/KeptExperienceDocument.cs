using System.Globalization;
using System.Text.Json.Nodes;
using Silkwright.Contracts;

namespace Silkwright.Records.Coating;

/// <summary>Experience taken in by a shop, as other programs read it: silkwright/coat-experience-kept/1, docs/schema/coat-experience-kept.json.</summary>
public static class KeptExperienceDocument
{
    public static JsonObject Of(IReadOnlyList<KeptExperience> history)
    {
        ArgumentNullException.ThrowIfNull(history);
        var withdrawn = history.Where(entry => entry.Withdraws is not null).ToDictionary(entry => entry.Withdraws!.Value, entry => entry.Why);
        var document = DocumentJson.Start("coat-experience-kept");
        document["entries"] = new JsonArray([.. history.Where(entry => entry.Text is not null).Select(entry =>
        {
            var experience = CoatExperienceReader.Read(entry.Text!, entry.Source);
            var node = new JsonObject
            {
                ["number"] = entry.Number,
                ["source"] = entry.Source,
                ["readings"] = experience.Readings,
                ["shops"] = experience.Shops,
                ["recordedBy"] = entry.RecordedBy,
                ["recordedAt"] = entry.RecordedAt.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture),
            };
            node.AddIfThere("withdrawnBecause", withdrawn.GetValueOrDefault(entry.Number));
            return (JsonNode)node;
        })]);
        return document;
    }
}
