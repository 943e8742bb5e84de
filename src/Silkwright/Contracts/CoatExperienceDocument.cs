using System.Text.Json.Nodes;
using Silkwright.Coating.Learning;

namespace Silkwright.Contracts;

/// <summary>What shops' readings taught, as it travels from shop to shop: silkwright/coat-experience/1, docs/schema/coat-experience.json.</summary>
public static class CoatExperienceDocument
{
    /// <summary>Its schema and version.</summary>
    public const string Schema = "silkwright/coat-experience/1";

    public static JsonObject Of(CoatExperience experience)
    {
        ArgumentNullException.ThrowIfNull(experience);
        var document = DocumentJson.Start("coat-experience");
        document["readings"] = experience.Readings;
        document["shops"] = experience.Shops;
        document["effects"] = new JsonArray([.. experience.Shares().Select((share, i) => (JsonNode)new JsonObject
        {
            ["group"] = share.Effect.Group,
            ["name"] = share.Effect.Name,
            ["deviations"] = share.Deviations,
            ["standardError"] = share.StandardError,
            ["pull"] = experience.Pull[i],
            ["precision"] = new JsonArray([.. experience.Precision.Skip(i * experience.Effects.Count).Take(i + 1).Select(value => (JsonNode)value)]),
        })]);
        document["squares"] = experience.Squares;
        document["spreads"] = new JsonArray([.. experience.Spreads.OrderBy(spread => spread.Key, StringComparer.Ordinal)
            .Select(spread => (JsonNode)new JsonObject { ["group"] = spread.Key, ["precision"] = spread.Value.Precision, ["pull"] = spread.Value.Pull })]);
        document["parts"] = DocumentJson.Of(experience.Parts);
        return document;
    }
}
