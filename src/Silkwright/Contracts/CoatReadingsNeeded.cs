using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>Readings whose mean lies within a wanted half width of the truth in nine of ten cases.</summary>
public sealed record CoatReadingsNeeded
{
    public required double WantedUm { get; init; }

    /// <summary>Standard deviation of one reading. [µm]</summary>
    public required Estimate SpreadUm { get; init; }

    /// <summary>None where more than a thousand.</summary>
    public int? Needed { get; init; }

    /// <summary>Where the spread lies at the upper end of its interval.</summary>
    public int? NeededAtWorst { get; init; }

    /// <summary>Whether the spread was read on places that were read again.</summary>
    public required bool IsRepeated { get; init; }

    public required IReadOnlyList<CoatFlag> Flags { get; init; }

    public required IReadOnlyList<Note> Notes { get; init; }
}
