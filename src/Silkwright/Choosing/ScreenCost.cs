using Silkwright.Estimates;

namespace Silkwright.Choosing;

/// <summary>Expected cost of one colour's screens over the run, part by part in the order of the work. [currency]</summary>
public sealed record ScreenCost
{
    /// <summary>What it was worked out from.</summary>
    public required CostCase Case { get; init; }

    public required Estimate Total { get; init; }

    /// <summary>What the width of the total comes from, largest first.</summary>
    public required IReadOnlyList<Driver> Drivers { get; init; }

    /// <summary>Emulsion on the screen.</summary>
    public required Estimate EmulsionOnScreen { get; init; }

    /// <summary>Coating strokes, and mixing.</summary>
    public required Estimate Coating { get; init; }

    /// <summary>Hands and place while it dries.</summary>
    public required Estimate Drying { get; init; }

    /// <summary>Minutes at the lamp.</summary>
    public required Estimate Exposing { get; init; }

    /// <summary>Washing out, checking, taping.</summary>
    public required Estimate Making { get; init; }

    /// <summary>A second exposure or a hardener.</summary>
    public required Estimate Finish { get; init; }

    /// <summary>Taking the stencil off, or the mesh where it cannot be.</summary>
    public required Estimate Reclaim { get; init; }

    /// <summary>All hands, finish and reclaiming together.</summary>
    public required Estimate Labour { get; init; }

    /// <summary>Emulsion thrown away because its life ends first.</summary>
    public required Estimate Waste { get; init; }

    /// <summary>Spares put on, remakes and stopped press, as expected over the run.</summary>
    public required Estimate Remakes { get; init; }

    /// <summary>Of these the screens made again before they print: not cured through, or stuck to the film.</summary>
    public required Estimate RemadeUnprinted { get; init; }
}
