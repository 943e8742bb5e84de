using Silkwright.Artwork;
using Silkwright.Choosing;
using Silkwright.Coating.Learning;
using Silkwright.Life;

namespace Silkwright.Plans;

/// <summary>One colour with everything that is settled before an emulsion is looked at.</summary>
internal sealed record ColourBrief
{
    public required JobColour Colour { get; init; }

    public required ArtworkNeeds Needs { get; init; }

    public required MeshCandidate Mesh { get; init; }

    public required Frame? Frame { get; init; }

    /// <summary>Impressions that this colour's screens must give.</summary>
    public required long Impressions { get; init; }

    public required DateOnly On { get; init; }

    public required Shop Shop { get; init; }

    /// <summary>What the shop's counted stencils teach.</summary>
    public required LifeLearning Lives { get; init; }

    /// <summary>What the shop's gauge readings teach.</summary>
    public required CoatHierarchy Coats { get; init; }

    /// <summary>Emulsion over mesh asked for instead of the usual one. [µm]</summary>
    public double? WantedEomUm { get; init; }

    public bool Underbase => Colour.Role == InkRole.Underbase;

    public bool Halftone => Needs.RulingLpi is not null;
}
