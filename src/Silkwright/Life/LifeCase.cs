using Silkwright.Emulsion;
using Silkwright.Estimates;

namespace Silkwright.Life;

/// <summary>A stencil and the run it faces.</summary>
public sealed record LifeCase
{
    public required EmulsionFamily Family { get; init; }

    public required InkKind Ink { get; init; }

    /// <summary>The emulsion is made to stand this ink (its own list, or its family's).</summary>
    public required bool MadeForInk { get; init; }

    /// <summary>The emulsion a capillary film is laid with; none where it is laid with water.</summary>
    public LayingEmulsion? LaidWith { get; init; }

    public StencilFinish Finish { get; init; }

    /// <summary>It is wiped on press with what it does not stand well.</summary>
    public bool WornByWash { get; init; }

    /// <summary>Emulsion over mesh. [µm]</summary>
    public required Estimate EomUm { get; init; }

    /// <summary>Impressions of the run on this screen.</summary>
    public required long Impressions { get; init; }

    /// <summary>Chance that the exposure cured through, from the exposure window's latitude. [0..1]</summary>
    public double WellCured { get; init; } = 1;

    /// <summary>What this shop's counted stencils say; none: nobody has counted.</summary>
    public LearntLife? Learnt { get; init; }
}
