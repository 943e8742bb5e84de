using Silkwright.Artwork;

namespace Silkwright.Plans;

/// <summary>One spot of a film held against mesh and stencil.</summary>
/// <param name="HeldUm">What it is held against. [µm]</param>
/// <param name="IsDotRule">It lies in a halftone, where dots and holes are judged and not lines and gaps.</param>
/// <param name="IsStencils">The stencil decides, not the mesh.</param>
/// <param name="Judgement">How it compares.</param>
public sealed record SpotVerdict(double HeldUm, bool IsDotRule, bool IsStencils, SpotJudgement Judgement)
{
    /// <summary>Holds a spot against what is held.</summary>
    /// <param name="spot">The spot.</param>
    /// <param name="held">What mesh and stencil hold.</param>
    public static SpotVerdict Of(FilmSpot spot, HeldWidths held)
    {
        ArgumentNullException.ThrowIfNull(spot);
        ArgumentNullException.ThrowIfNull(held);
        var um = (spot.IsImage, spot.IsInHalftone) switch
        {
            (true, true) => held.DotUm,
            (true, false) => held.LineUm,
            (false, true) => held.HoleUm,
            _ => held.GapUm,
        };
        var judgement = spot.HighUm < um ? SpotJudgement.Finer : spot.LowUm < um && !spot.IsWidest ? SpotJudgement.OnTheEdge : SpotJudgement.Holds;
        return new SpotVerdict(um, spot.IsInHalftone, spot.IsImage && held.IsStencils(um), judgement);
    }
}
