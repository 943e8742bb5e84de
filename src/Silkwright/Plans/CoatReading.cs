using Silkwright.Coating;
using Silkwright.Mesh;

namespace Silkwright.Plans;

/// <summary>A stencil thickness that the shop has read.</summary>
public sealed record CoatReading
{
    public required string EmulsionId { get; init; }

    public required MeshFabric Mesh { get; init; }

    public required IReadOnlyList<Stroke> Strokes { get; init; }

    public string? TroughId { get; init; }

    /// <summary>Who coated; none: anybody.</summary>
    public string? Operator { get; init; }

    /// <summary>The screen that was read; readings of one screen share its luck. None: one of its own.</summary>
    public string? Screen { get; init; }

    public required double EomUm { get; init; }

    public DateOnly? On { get; init; }
}
