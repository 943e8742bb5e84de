using Silkwright.Mesh;

namespace Silkwright.Records.Screens;

/// <summary>A frame with its mesh and the stencil it will carry. A frame that is reclaimed and coated again is a new screen.</summary>
public sealed record Screen
{
    /// <summary>Short code to write on the frame, such as "S-0042".</summary>
    public required string Id { get; init; }

    public required string ShopKey { get; init; }

    /// <summary>The frame's own label.</summary>
    public required string Frame { get; init; }

    /// <summary>[1/cm]</summary>
    public required double MeshCountPerCm { get; init; }

    /// <summary>[µm]</summary>
    public required double MeshThreadUm { get; init; }

    public required bool MeshDyed { get; init; }

    public string? MeshLot { get; init; }

    /// <summary>As read when the record was begun. [N/cm]</summary>
    public double? TensionNPerCm { get; init; }

    public required DateTimeOffset AddedAt { get; init; }

    public required string AddedBy { get; init; }

    /// <summary>The same key again is the same screen.</summary>
    public required string IdempotencyKey { get; init; }

    public MeshFabric Mesh => new(MeshCountPerCm, MeshThreadUm, MeshDyed) { TensionNPerCm = TensionNPerCm };
}
