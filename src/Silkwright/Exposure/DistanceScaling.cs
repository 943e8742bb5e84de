namespace Silkwright.Exposure;

/// <summary>What another lamp distance does to the exposure, or why no number can say.</summary>
/// <param name="Factor">New exposure over old. [1]; none where the lamp's light does not follow the inverse square.</param>
/// <param name="WhyNot">Why there is no factor, and what to do instead; none where there is one.</param>
public sealed record DistanceScaling(double? Factor, string? WhyNot = null);
