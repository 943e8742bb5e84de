using Silkwright.Estimates;

namespace Silkwright.Choosing;

/// <summary>Everything the expected cost of one colour's screens is made of.</summary>
public sealed record CostCase
{
    /// <summary>Screens made up front, spares included.</summary>
    public required int Screens { get; init; }

    /// <summary>Emulsion on one screen. [g]</summary>
    public required Estimate GramsPerScreen { get; init; }

    /// <summary>Price of the emulsion. [currency/kg]</summary>
    public required Estimate PricePerKg { get; init; }

    /// <summary>Hands-on time for one screen. [min]</summary>
    public required Estimate MinutesPerScreen { get; init; }

    /// <summary>Labour. [currency/h]</summary>
    public required Estimate LabourPerHour { get; init; }

    /// <summary>Share of each container that is thrown away. [%], below 100</summary>
    public required Estimate WastePercent { get; init; }

    /// <summary>Stencils expected to fail over the run, spares not counted.</summary>
    public required Estimate ExpectedFailures { get; init; }

    /// <summary>Chance that a screen must be made again before it prints: not cured, or stuck to the film. 0 to 1</summary>
    public required Estimate RemakeChance { get; init; }

    /// <summary>What one failure on press costs beside the new screen: the stopped press. [currency]</summary>
    public required Estimate StopPerFailure { get; init; }

    /// <summary>Costs of the chosen finish beside its minutes: hardener, a mesh that cannot be reclaimed. [currency/screen]</summary>
    public required Estimate FinishPerScreen { get; init; }
}
