namespace Silkwright.Records.Coating;

/// <summary>What other shops' readings taught, as a shop took it in. Never changed and never removed: what is not to count any more is withdrawn by another entry.</summary>
public sealed record KeptExperience
{
    public required string ShopKey { get; init; }

    /// <summary>Counts from 1 in the order of writing.</summary>
    public required int Number { get; init; }

    /// <summary>silkwright/coat-experience/1 as it was checked; none where this entry withdraws another.</summary>
    public string? Text { get; init; }

    /// <summary>The file it came from.</summary>
    public required string Source { get; init; }

    public required DateTimeOffset RecordedAt { get; init; }

    /// <summary>Who took it in, as they are called; there are no accounts.</summary>
    public required string RecordedBy { get; init; }

    /// <summary>The entry that this one withdraws, by its number.</summary>
    public int? Withdraws { get; init; }

    /// <summary>Why it was withdrawn.</summary>
    public string? Why { get; init; }
}
