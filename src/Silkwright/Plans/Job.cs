namespace Silkwright.Plans;

/// <summary>A job to be planned.</summary>
public sealed record Job
{
    public required string Name { get; init; }

    /// <summary>The day the plan is for: decides which lots are over.</summary>
    public required DateOnly Date { get; init; }

    public Garment Garment { get; init; } = new();

    /// <summary>Pieces.</summary>
    public required long Run { get; init; }

    public DateOnly? DueDate { get; init; }

    public required IReadOnlyList<JobColour> Colours { get; init; }
}
