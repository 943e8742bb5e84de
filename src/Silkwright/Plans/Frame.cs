using Silkwright.Mesh;

namespace Silkwright.Plans;

/// <summary>Frames of one kind that a shop has.</summary>
public sealed record Frame
{
    public required double InsideWidthMm { get; init; }

    public required double InsideHeightMm { get; init; }

    /// <summary>The mesh stretched on it; none: any of the shop's.</summary>
    public MeshFabric? Mesh { get; init; }

    public double? TensionNPerCm { get; init; }

    public int Count { get; init; } = 1;
}
