using Silkwright.Estimates;

namespace Silkwright.Choosing;

/// <summary>Expected cost of one colour's screens over the run, in the order making, waiting, waste, risk. [currency]</summary>
public sealed record ScreenCost
{
    public required Estimate Total { get; init; }

    /// <summary>What the width of the total comes from, largest first.</summary>
    public required IReadOnlyList<Driver> Drivers { get; init; }

    /// <summary>Emulsion on the screen.</summary>
    public required Estimate EmulsionOnScreen { get; init; }

    /// <summary>Hands: coating, exposing, washing out, checking.</summary>
    public required Estimate Labour { get; init; }

    /// <summary>Emulsion thrown away because its life ends first.</summary>
    public required Estimate Waste { get; init; }

    /// <summary>Spares, remakes and stopped press, as expected over the run.</summary>
    public required Estimate Remakes { get; init; }
}
