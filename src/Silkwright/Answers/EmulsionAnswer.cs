using Silkwright.Choosing;
using Silkwright.Estimates;
using Silkwright.Plans;

namespace Silkwright.Answers;

/// <summary>Which emulsion for one colour of one job, why, and what would change that: what an advisor answers.</summary>
public sealed record EmulsionAnswer
{
    public required Job Job { get; init; }

    /// <summary>The colour asked about, planned to the end.</summary>
    public required ColourPlan Plan { get; init; }

    public required string Currency { get; init; }

    /// <summary>The emulsions that may be used, held against each other; none where none may.</summary>
    public Comparison? Comparison { get; init; }

    /// <summary>Full costs of the emulsions that may be used, cheapest first.</summary>
    public required IReadOnlyList<Contender> Contenders { get; init; }

    /// <summary>What each costs along the circumstances that may turn the choice.</summary>
    public required IReadOnlyList<CostCurve> Curves { get; init; }

    /// <summary>How each that may be used bears light and scatter, in the order of <see cref="Contenders"/>.</summary>
    public required IReadOnlyList<Handling> Handling { get; init; }

    /// <summary>What was told.</summary>
    public required IReadOnlyList<string> Facts { get; init; }

    /// <summary>What was not told and is assumed.</summary>
    public required IReadOnlyList<Note> Assumed { get; init; }

    /// <summary>What is known of these emulsions and yet not reckoned with, and why.</summary>
    public IReadOnlyList<string> NotReckoned { get; init; } = [];

    /// <summary>Ends the recommendation when it happens.</summary>
    public required IReadOnlyList<string> StopIf { get; init; }

    /// <summary>What to measure first, most telling first.</summary>
    public required IReadOnlyList<string> MeasureFirst { get; init; }
}
