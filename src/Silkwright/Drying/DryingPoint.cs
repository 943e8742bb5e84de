namespace Silkwright.Drying;

/// <summary>One point of a drying curve.</summary>
/// <param name="Minutes">Since the last stroke. [min]</param>
/// <param name="MoisturePercent">Water as a share of the dry coat. [%]</param>
public sealed record DryingPoint(double Minutes, double MoisturePercent);
