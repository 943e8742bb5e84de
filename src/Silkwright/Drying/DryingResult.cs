using Silkwright.Estimates;

namespace Silkwright.Drying;

/// <summary>How long a coat dries, and whether a film will stick to it.</summary>
public sealed record DryingResult
{
    public required Estimate MinutesToTouchDry { get; init; }

    /// <summary>Until the coat holds no more water than is safe to expose; none where this air can never get it there.</summary>
    public Estimate? MinutesToSafe { get; init; }

    /// <summary>Water as a share of the dry coat over time.</summary>
    public required IReadOnlyList<DryingPoint> Curve { get; init; }

    /// <summary>Water that the coat keeps in this air for ever. [% of the dry coat]</summary>
    public required double EquilibriumMoisturePercent { get; init; }

    /// <summary>Chance that a film sticks to the coat in the vacuum frame when exposed dry by this room's measure. [%]</summary>
    public required Estimate StickRiskPercent { get; init; }

    /// <summary>Why it sticks or does not, in one sentence.</summary>
    public required string StickReason { get; init; }

    public IReadOnlyList<Note> Notes { get; init; } = [];
}
