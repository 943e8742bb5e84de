using Silkwright.Estimates;

namespace Silkwright.Mesh;

/// <summary>Geometry of a plain-woven mesh with square openings.</summary>
public sealed record WovenMesh
{
    public required MeshFabric Fabric { get; init; }

    /// <summary>Distance from thread to thread. [µm]</summary>
    public required double PitchUm { get; init; }

    public required double OpeningUm { get; init; }

    /// <summary>Share of the mesh that is opening. [%]</summary>
    public required double OpenAreaPercent { get; init; }

    public required Estimate FabricThicknessUm { get; init; }

    /// <summary>Theoretical ink volume. [cm³/m²], the same number as µm</summary>
    public required Estimate InkVolumeCm3PerM2 { get; init; }

    /// <summary>Space between the threads within the fabric's thickness, as an even layer. [µm]</summary>
    public required Estimate VoidUm { get; init; }

    /// <summary>Smallest dot that both clears and anchors. [µm]</summary>
    public required Estimate SmallestDotUm { get; init; }

    /// <summary>Smallest line that prints whole. [µm]</summary>
    public required Estimate SmallestLineUm { get; init; }

    public IReadOnlyList<Note> Notes { get; init; } = [];

    public static WovenMesh Of(MeshFabric fabric) => throw new NotImplementedException();
}
