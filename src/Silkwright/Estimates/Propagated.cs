namespace Silkwright.Estimates;

/// <summary>The answer, and what its width comes from, largest first.</summary>
public sealed record Propagated(Estimate Estimate, IReadOnlyList<Driver> Drivers);
