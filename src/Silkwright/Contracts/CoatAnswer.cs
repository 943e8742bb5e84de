using Silkwright.Coating.Learning;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>Coats predicted out of readings.</summary>
public sealed record CoatAnswer
{
    /// <summary>In their order: one new reading, and the mean of such coats. [µm]</summary>
    public required IReadOnlyList<(CoatRow Row, Estimate EomUm, Estimate MeanUm)> Cases { get; init; }

    /// <summary>The latest readings learnt from, each beside what all the others alone say of it. [µm]</summary>
    public required IReadOnlyList<(CoatRow Row, Estimate Expected)> Held { get; init; }

    public required IReadOnlyList<CoatEffect> Effects { get; init; }

    /// <summary>One standard deviation of a gauge on one place; none where no place was read twice. [µm]</summary>
    public Estimate? RepeatabilityUm { get; init; }

    /// <summary>Readings given, and learnt from.</summary>
    public required int Given { get; init; }

    public required int Used { get; init; }

    public required IReadOnlyList<CoatFlag> Flags { get; init; }

    /// <summary>Readings learnt from with what the model made of each, to hold it against.</summary>
    public required CoatHierarchy Learnt { get; init; }

    public required IReadOnlyList<Note> Notes { get; init; }
}
