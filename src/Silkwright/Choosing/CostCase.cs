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

    /// <summary>The film under a film laid with emulsion; 0 for every other stencil. [currency/screen]</summary>
    public Estimate FilmPerScreen { get; init; } = Estimate.Exact(0, Ground.Model);

    /// <summary>Hands-on minutes for one screen.</summary>
    public required ScreenWork Work { get; init; }

    /// <summary>The place and the warmth one screen takes while it dries. [currency/screen]</summary>
    public required Estimate DryingPlacePerScreen { get; init; }

    /// <summary>Labour. [currency/h]</summary>
    public required Estimate LabourPerHour { get; init; }

    /// <summary>Share of each container that is thrown away. [%], below 100</summary>
    public required Estimate WastePercent { get; init; }

    /// <summary>Stencils expected to fail over the run: a mean, its ends those of the life.</summary>
    public required Estimate ExpectedFailures { get; init; }

    /// <summary>Chance that a screen must be made again before it prints: not cured, or stuck to the film. 0 to 1</summary>
    public required Estimate RemakeChance { get; init; }

    /// <summary>A press that waits for a screen to be made again. [currency]</summary>
    public required Estimate StopForRemake { get; init; }

    /// <summary>A press that waits for a finished spare to be put on. [currency]</summary>
    public required Estimate StopForSpare { get; init; }

    /// <summary>What the chosen finish uses up beside its minutes. [currency/screen]</summary>
    public required Estimate FinishPerScreen { get; init; }

    /// <summary>What taking the stencil off uses up beside its minutes; the mesh where it cannot be taken off. [currency/screen]</summary>
    public required Estimate ReclaimPerScreen { get; init; }
}
