using Silkwright.Mesh;

namespace Silkwright.Records.Screens;

/// <summary>A screen to be put on record.</summary>
public sealed record ScreenDraft
{
    /// <summary>None: the next free "S-0001".</summary>
    public string? Id { get; init; }

    /// <summary>None: the default shop.</summary>
    public string? ShopKey { get; init; }

    /// <summary>The frame's own label.</summary>
    public required string Frame { get; init; }

    /// <summary>Count, thread, colour and, where read, tension.</summary>
    public required MeshFabric Mesh { get; init; }

    public string? MeshLot { get; init; }

    /// <summary>The person.</summary>
    public required string Person { get; init; }

    /// <summary>A new one for each screen; the same again gives the same screen. None: one is made.</summary>
    public string? IdempotencyKey { get; init; }
}
