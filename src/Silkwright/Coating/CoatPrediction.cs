using Silkwright.Estimates;

namespace Silkwright.Coating;

/// <summary>What the strokes leave once dry.</summary>
public sealed record CoatPrediction
{
    public required IReadOnlyList<Stroke> Strokes { get; init; }

    /// <summary>Dry emulsion over the mesh on the print side, one new reading. [µm]</summary>
    public required Estimate EomUm { get; init; }

    /// <summary>Mesh and emulsion over mesh together. [µm]</summary>
    public required Estimate StencilUm { get; init; }

    /// <summary>Wet emulsion as an even layer over the screen's area. [µm]</summary>
    public required Estimate WetUm { get; init; }

    /// <summary>Solids by weight of that wet layer, all that lies in it together. [%]</summary>
    public required Estimate SolidsPercent { get; init; }

    /// <summary>Emulsion used: the film of a capillary film laid with water, the liquid of one laid with emulsion. [g/m²]</summary>
    public required Estimate GramsPerM2 { get; init; }

    /// <summary>What the width of <see cref="EomUm"/> comes from.</summary>
    public required IReadOnlyList<Driver> Drivers { get; init; }

    public IReadOnlyList<Note> Notes { get; init; } = [];
}
