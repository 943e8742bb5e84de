using Silkwright.Emulsion;
using Silkwright.Mesh;

namespace Silkwright.Coating.Learning;

/// <summary>A coat as somebody laid it, to be learnt from or asked about. Names that are the same are the same shop, person, trough or screen.</summary>
public sealed record CoatObservation
{
    public required string Shop { get; init; }

    /// <summary>None where it is not known: anybody of the shop.</summary>
    public string? Operator { get; init; }

    /// <summary>One without a name is anybody's: nothing is learnt of it.</summary>
    public required Trough Trough { get; init; }

    /// <summary>Whether the trough's edge was measured; else its radius stands for any between sharp and round.</summary>
    public bool EdgeIsKnown { get; init; } = true;

    public required StencilEmulsion Emulsion { get; init; }

    public required WovenMesh Mesh { get; init; }

    public required IReadOnlyList<Stroke> Strokes { get; init; }

    /// <summary>The screen that was read; none: one of its own.</summary>
    public string? Screen { get; init; }
}
