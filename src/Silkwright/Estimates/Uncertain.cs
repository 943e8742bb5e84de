namespace Silkwright.Estimates;

/// <summary>An uncertain input by name.</summary>
public sealed record Uncertain(string Name, Estimate Estimate);
