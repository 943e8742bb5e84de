using Silkwright.Coating.Learning;

namespace Silkwright.Plans;

/// <summary>A colour's emulsion as it was chosen, and its coat as a reading of it would be learnt from.</summary>
/// <param name="Chosen">What won.</param>
/// <param name="Coat">Anybody's hand of the shop, on a screen of its own.</param>
internal sealed record PlannedCoat(StencilCandidate Chosen, CoatObservation Coat)
{
    /// <summary>What won a contest; none where nothing did.</summary>
    public static PlannedCoat? Of(EmulsionContest contest, ColourBrief brief) => contest.Winner is { } winner
        ? new PlannedCoat(winner, ShopCoats.Asked(brief.Shop, winner.Trough, winner.Emulsion, brief.Mesh.Mesh) with { Strokes = winner.Coat.Strokes })
        : null;
}
