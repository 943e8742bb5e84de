using Silkwright.Estimates;

namespace Silkwright.Choosing;

/// <summary>Hands-on minutes for one screen, in the order of the work. [min]</summary>
/// <param name="Coating">Strokes, and mixing shared over the screens of a container.</param>
/// <param name="Drying">Racking, and fetching a screen back for each coat on a dry one.</param>
/// <param name="Exposing">Waiting at the lamp.</param>
/// <param name="Making">Setting up the exposure, washing out, checking, taping.</param>
/// <param name="Finish">A second exposure or a hardener.</param>
/// <param name="Reclaim">Taking the stencil off again and degreasing.</param>
public sealed record ScreenWork(Estimate Coating, Estimate Drying, Estimate Exposing, Estimate Making, Estimate Finish, Estimate Reclaim)
{
    /// <summary>All hands-on minutes of one screen. [min]</summary>
    public Estimate Total => Propagation.Through(
        x => x.Sum(),
        [
            new("coating", Coating), new("drying", Drying), new("exposing", Exposing),
            new("washing out and checking", Making), new("finish", Finish), new("reclaiming", Reclaim),
        ],
        floor: 0).Estimate;
}
