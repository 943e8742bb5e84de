using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Mesh;

namespace Silkwright.Ink;

/// <summary>A print to be inked.</summary>
public sealed record InkCase
{
    public required MeshFabric Mesh { get; init; }

    /// <summary>Emulsion over mesh. [µm]</summary>
    public required Estimate EomUm { get; init; }

    public required InkKind Ink { get; init; }

    /// <summary>Share of the film that prints. [%]</summary>
    public required Estimate CoveragePercent { get; init; }

    /// <summary>Area of the film; multiplied by coverage. [cm²]</summary>
    public required Estimate AreaCm2 { get; init; }

    /// <summary>Width of the finest line, which feels the stencil's edge most. [µm]; none: large areas.</summary>
    public double? FinestLineUm { get; init; }

    public required long Impressions { get; init; }

    /// <summary>Strokes of the squeegee an impression.</summary>
    public int Strokes { get; init; } = 1;

    /// <summary>Share of the theoretical ink volume that reaches the garment. [%]; 60 to 85 where none is given.</summary>
    public Estimate? TransferPercent { get; init; }

    /// <summary>Density of the ink. [g/cm³]</summary>
    public Estimate? DensityGPerCm3 { get; init; }

    /// <summary>Solids by volume. [%]; gives the dry deposit.</summary>
    public Estimate? VolumeSolidsPercent { get; init; }
}
