using System.Text.Json.Nodes;
using Silkwright.Drying;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>A drying time as other programs read it: silkwright/dry-time/1, docs/schema/dry-time.json.</summary>
public static class DryingDocument
{
    public static JsonObject Of(DryingResult drying)
    {
        var document = DocumentJson.Start("dry-time");
        document["minutesToTouchDry"] = Minutes(drying.MinutesToTouchDry);
        document.AddIfThere("minutesToSafe", drying.MinutesToSafe is { } safe ? Minutes(safe) : null);
        document["equilibriumMoisturePercent"] = drying.EquilibriumMoisturePercent;
        document["curve"] = new JsonArray([.. drying.Curve.Select(point => (JsonNode)new JsonObject
        {
            ["minutes"] = point.Minutes,
            ["moisturePercent"] = point.MoisturePercent,
        })]);
        document["sticks"] = new JsonObject
        {
            ["riskPercent"] = drying.StickRiskPercent.Value,
            ["riskLowPercent"] = drying.StickRiskPercent.Low,
            ["riskHighPercent"] = drying.StickRiskPercent.High,
            ["ground"] = Names.Of(drying.StickRiskPercent.Ground),
            ["reason"] = drying.StickReason,
        };
        document["notes"] = DocumentJson.Of(drying.Notes);
        return document;
    }

    private static JsonObject Minutes(Estimate minutes) => new()
    {
        ["low"] = minutes.Low,
        ["best"] = minutes.Value,
        ["high"] = minutes.High,
        ["coverPercent"] = minutes.CoverPercent,
        ["ground"] = Names.Of(minutes.Ground),
    };
}
