using Silkwright.Estimates;

namespace Silkwright.Scheduling.Shelf;

/// <summary>How sure the costs of the shelves told are.</summary>
/// <param name="MonthlyCost">Of the shelf to keep. [money/month]</param>
/// <param name="ChanceCheapestPercent">How often it is the cheapest of the shelves told. [%]</param>
public sealed record ShelfDoubt(Estimate MonthlyCost, double ChanceCheapestPercent)
{
    /// <summary>What the next best shelf costs more. [money/month]</summary>
    public Estimate? SecondBest { get; init; }

    /// <summary>What keeping one more costs more. [money/month]</summary>
    public Estimate? OneMore { get; init; }

    /// <summary>What keeping one fewer costs more. [money/month]</summary>
    public Estimate? OneFewer { get; init; }

    /// <summary>What the change from today's shelf saves. [money/month]</summary>
    public Estimate? SavesPerMonth { get; init; }
}
