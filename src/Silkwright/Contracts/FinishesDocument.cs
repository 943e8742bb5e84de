using System.Text.Json.Nodes;
using Silkwright.Plans;

namespace Silkwright.Contracts;

/// <summary>The finishes weighed for a stencil, as other programs read them.</summary>
internal static class FinishesDocument
{
    public static JsonArray Of(IReadOnlyList<FinishOption> finishes) => new([.. finishes.Select(option => (JsonNode)new JsonObject
    {
        ["finish"] = Names.Of(option.Finish),
        ["cost"] = DocumentJson.Of(option.Cost.Total),
        ["finishPercent"] = DocumentJson.Of(option.FinishPercent),
        ["spares"] = option.Spares,
        ["meshLost"] = option.MeshLost,
    })]);
}
