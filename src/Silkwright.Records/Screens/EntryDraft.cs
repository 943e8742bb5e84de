namespace Silkwright.Records.Screens;

/// <summary>An entry to be written.</summary>
public sealed record EntryDraft
{
    public required ScreenFact Fact { get; init; }

    /// <summary>When it happened. None: now, or for a correction when the corrected entry happened.</summary>
    public DateTimeOffset? At { get; init; }

    /// <summary>The person.</summary>
    public required string Person { get; init; }

    public string? Note { get; init; }

    /// <summary>A new one for each entry; the same again gives the same entry. None: one is made.</summary>
    public string? IdempotencyKey { get; init; }

    /// <summary>The sequence of the entry this one stands in for.</summary>
    public int? Corrects { get; init; }

    /// <summary>Why: required for a correction.</summary>
    public string? Why { get; init; }
}
