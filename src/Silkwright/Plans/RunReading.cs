using Silkwright.Emulsion;
using Silkwright.Life;

namespace Silkwright.Plans;

/// <summary>A stencil that the shop has counted to its end.</summary>
public sealed record RunReading
{
    public required string EmulsionId { get; init; }

    public required InkKind Ink { get; init; }

    /// <summary>Impressions made, 1 or more.</summary>
    public required long Impressions { get; init; }

    /// <summary>It failed there; otherwise it came off sound.</summary>
    public required bool Broke { get; init; }

    public StencilFinish Finish { get; init; }

    /// <summary>Emulsion over mesh, where it was read. [µm]</summary>
    public double? EomUm { get; init; }

    public DateOnly? On { get; init; }
}
