namespace Silkwright.Scheduling.Shelf;

/// <summary>The question which few emulsions to keep, and which job to make with which. docs/engines/shelf.md.</summary>
/// <param name="Emulsions">What could be kept.</param>
/// <param name="Jobs">What must be made.</param>
public sealed record ShelfCase(IReadOnlyList<ShelfEmulsion> Emulsions, IReadOnlyList<ShelfJob> Jobs)
{
    /// <summary>The most emulsions to keep. 1 or more; none: as many as pay.</summary>
    public int? Most { get; init; }

    /// <summary>The money it is in, for people; none where the case does not say.</summary>
    public string? Currency { get; init; }

    /// <summary>Months that may come; none: the jobs' own figures are certain.</summary>
    public IReadOnlyList<ShelfScenario> Scenarios { get; init; } = [];
}
