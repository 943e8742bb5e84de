using Silkwright.Choosing;
using Silkwright.Coating;
using Silkwright.Drying;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Exposure;
using Silkwright.Life;
using Silkwright.Stock;

namespace Silkwright.Plans;

/// <summary>One emulsion carried through every station for one colour.</summary>
internal sealed record StencilCandidate
{
    public required StencilEmulsion Emulsion { get; init; }

    public required ResistanceAnswer Resistance { get; init; }

    public required LotState Lot { get; init; }

    public required Trough Trough { get; init; }

    public required CoatPrediction Coat { get; init; }

    public required DryingResult Drying { get; init; }

    public required Lamp Lamp { get; init; }

    /// <summary>Why this lamp of several; none where the shop has one.</summary>
    public required string? LampBecause { get; init; }

    public required ExposureWindow Exposure { get; init; }

    public required StencilFinish Finish { get; init; }

    /// <summary>Every finish weighed, with its price; the one taken is the cheapest.</summary>
    public IReadOnlyList<FinishOption> Finishes { get; init; } = [];

    public required LifeResult Life { get; init; }

    public required SparesAdvice Spares { get; init; }

    public required Estimate MinutesPerScreen { get; init; }

    public required ScreenCost Cost { get; init; }
}
