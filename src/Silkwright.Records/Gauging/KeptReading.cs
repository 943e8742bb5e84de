using Silkwright.Gauging;

namespace Silkwright.Records.Gauging;

/// <summary>A gauge reading on record. Never changed and never removed: one that was wrong is withdrawn by another entry.</summary>
public sealed record KeptReading
{
    public required string ShopKey { get; init; }

    /// <summary>Counts from 1 in the order of writing.</summary>
    public required int Number { get; init; }

    /// <summary>What was read; none where this entry withdraws another.</summary>
    public GaugeEntry? Reading { get; init; }

    /// <summary>The file it came from, or the page.</summary>
    public required string Source { get; init; }

    /// <summary>What was odd about it when it was taken.</summary>
    public string? Flag { get; init; }

    public required DateTimeOffset RecordedAt { get; init; }

    /// <summary>Who wrote it down, as they are called; there are no accounts.</summary>
    public required string RecordedBy { get; init; }

    /// <summary>Readings that came together have one key; the same key again is the same readings.</summary>
    public required string BatchKey { get; init; }

    /// <summary>The entry that this one withdraws, by its number.</summary>
    public int? Withdraws { get; init; }

    /// <summary>Why it was withdrawn.</summary>
    public string? Why { get; init; }
}
