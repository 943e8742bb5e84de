using Silkwright.Estimates;

namespace Silkwright.Stock;

/// <summary>How a lot of emulsion stands on a given day.</summary>
public sealed record LotState
{
    /// <summary>Days it keeps from the day it was sensitised (or received, for ready-to-use) at its temperature. [d]</summary>
    public required Estimate LifeDays { get; init; }

    /// <summary>Days left; below 0 once over. None where neither day is known.</summary>
    public Estimate? DaysLeft { get; init; }

    /// <summary>Over by its best estimate: not to be used.</summary>
    public required bool Over { get; init; }

    public IReadOnlyList<Note> Notes { get; init; } = [];
}
