namespace Silkwright.Records.Screens;

/// <summary>One entry in a screen's record. Never changed and never removed: a correction is another entry.</summary>
public sealed record ScreenEvent
{
    public required string ScreenId { get; init; }

    /// <summary>Counts from 1 in the order of writing.</summary>
    public required int Sequence { get; init; }

    public required ScreenEventKind Kind { get; init; }

    public required ScreenFact Fact { get; init; }

    /// <summary>When it happened.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>When it was written down here.</summary>
    public required DateTimeOffset RecordedAt { get; init; }

    /// <summary>Who did it, as they are called; there are no accounts.</summary>
    public required string Person { get; init; }

    public string? Note { get; init; }

    /// <summary>The same key again is the same entry.</summary>
    public required string IdempotencyKey { get; init; }

    /// <summary>The entry this one stands in for, by its sequence.</summary>
    public int? Corrects { get; init; }

    /// <summary>Why it was corrected.</summary>
    public string? Why { get; init; }
}
