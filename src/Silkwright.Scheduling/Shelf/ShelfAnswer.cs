using Silkwright.Estimates;

namespace Silkwright.Scheduling.Shelf;

/// <summary>The few emulsions to keep, with proof of how good the choice is.</summary>
public sealed record ShelfAnswer
{
    /// <summary>The emulsions to keep, in the order of the case.</summary>
    public required IReadOnlyList<string> Keep { get; init; }

    /// <summary>Emulsion by job, in the order of the case; with scenarios those of the likeliest month (the first of equals).</summary>
    public required IReadOnlyDictionary<string, string> Assignments { get; init; }

    /// <summary>What each kept emulsion is used for, in the order of the case.</summary>
    public required IReadOnlyList<ShelfUse> Uses { get; init; }

    /// <summary>Fixed, running and switching cost together; with scenarios their weighted mean. [money/month]</summary>
    public required double MonthlyCost { get; init; }

    /// <summary>How sure the costs are; none where they are given as single figures.</summary>
    public ShelfDoubt? Doubt { get; init; }

    /// <summary>The money it is in; none where the case does not say.</summary>
    public string? Currency { get; init; }

    /// <summary>What keeping the kept costs. [money/month]</summary>
    public required double FixedCostPerMonth { get; init; }

    /// <summary>What the screens cost. [money/month]</summary>
    public required double RunningCostPerMonth { get; init; }

    /// <summary>What changing from today's shelf costs. [money/month]</summary>
    public required double SwitchingCostPerMonth { get; init; }

    /// <summary>No shelf can cost less. [money/month]</summary>
    public required double Bound { get; init; }

    /// <summary>How far the cost may lie above the least one: (cost - bound) / |cost|. [%]</summary>
    public required double GapPercent { get; init; }

    /// <summary>How long the whole answer took. [s]</summary>
    public required double Seconds { get; init; }

    /// <summary>The cheapest of all other sets; none where there is no other.</summary>
    public OtherShelf? SecondBest { get; init; }

    /// <summary>The cheapest set of one emulsion more, even where <see cref="ShelfCase.Most"/> forbids it; none where there is none.</summary>
    public OtherShelf? OneMore { get; init; }

    /// <summary>The cheapest set of one emulsion fewer; none where it can't serve every job.</summary>
    public OtherShelf? OneFewer { get; init; }

    /// <summary>Against today's shelf; none where the case does not say what is kept today.</summary>
    public ShelfChange? Change { get; init; }

    /// <summary>The months that may come; empty where the case has no scenarios.</summary>
    public IReadOnlyList<ShelfMonth> Months { get; init; } = [];

    public IReadOnlyList<Note> Notes { get; init; } = [];

    /// <summary>Another wish was answered with the next best shelf: the same emulsions at the same cost.</summary>
    public bool IsSecondBest(OtherShelf other) => SecondBest is { } second && second.MonthlyCost == other.MonthlyCost && second.Keep.SequenceEqual(other.Keep);
}
