using System.Text.Json.Nodes;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>A number with its interval and ground, as every document writes it.</summary>
public static class EstimateDocument
{
    /// <summary><c>{value, low, high, coverPercent, ground}</c>.</summary>
    public static JsonObject Of(Estimate estimate) => new()
    {
        ["value"] = estimate.Value,
        ["low"] = estimate.Low,
        ["high"] = estimate.High,
        ["coverPercent"] = estimate.CoverPercent,
        ["ground"] = Word.Of(estimate.Ground),
    };
}
