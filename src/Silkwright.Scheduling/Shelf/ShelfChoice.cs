using Silkwright.Estimates;

namespace Silkwright.Scheduling.Shelf;

/// <summary>Which few emulsions to keep, and which job to make with which. docs/engines/shelf.md.</summary>
public static class ShelfChoice
{
    private const string Where = "shelf";

    /// <summary>Most costs looked at for the best shelf and for each other one: some seconds of work on a machine of 2026.</summary>
    internal const long BestLooks = 6_000_000_000;
    private const long OtherLooks = 1_500_000_000;
    private const long HopelessLooks = 300_000_000;

    private static readonly Note SingleFigures = new(
        "The case gives each cost as a single figure, so no interval of the month's cost can be known. Give costs as {\"value\", \"low\", \"high\"} to learn how sure the choice is.");

    private static readonly Note TogetherNote = new(
        "Costs of one emulsion are taken to rise and fall together, those of different emulsions each by themselves: the case does not say more.", Ground.Model);

    /// <summary>Share of the work, for progress.</summary>
    private const double BestShare = 0.55;
    private const double OtherShare = 0.15;

    /// <summary>The cheapest shelf with its proof, the next best, and what one emulsion more or fewer costs.</summary>
    /// <param name="shelf">The case.</param>
    /// <param name="time">Measures <see cref="ShelfAnswer.Seconds"/>; nothing else depends on it.</param>
    /// <param name="progress">Told the share of the work that is done.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="InputProblemException">Every fault of the case; or the jobs that no shelf within the rules serves.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static ShelfAnswer Of(ShelfCase shelf, TimeProvider time, IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        var answer = Of(shelf, RangeWorlds.Of(shelf), time, progress, cancel);
        return answer with { Notes = [.. answer.Notes, answer.Doubt is null ? SingleFigures : TogetherNote] };
    }

    /// <param name="shelf">The case.</param>
    /// <param name="worlds">What its costs may turn out to be; none: unknown.</param>
    /// <param name="time">Measures <see cref="ShelfAnswer.Seconds"/>; nothing else depends on it.</param>
    /// <param name="progress">Told the share of the work that is done.</param>
    /// <param name="cancel">Stops the work.</param>
    internal static ShelfAnswer Of(ShelfCase shelf, IShelfWorlds? worlds, TimeProvider time, IProgress<double>? progress, CancellationToken cancel)
    {
        var began = time.GetTimestamp();
        var problems = new ProblemList();
        ShelfCaseCheck.Check(shelf, Where, problems);
        problems.ThrowIfAny();
        ShelfConflicts.ThrowIfUnserved(shelf);
        var problem = ShelfProblem.Of(shelf);
        var all = problem.Emulsions;
        var nothing = new bool[problem.Choices];
        progress?.Report(0);
        var search = new ShelfSearch(problem, cancel);
        var best = Best(new ShelfRules(0, shelf.Most ?? all), nothing, BestLooks, 0, BestShare)
            ?? throw new InputProblemException(ShelfConflicts.Of(shelf, problem, cancel));
        // Where the best could not be proven, the others can still less: they are found, and their bounds say so.
        var looks = best.Bound < best.Cost ? HopelessLooks : OtherLooks;
        var kept = problem.EmulsionsOf(best.Keep);
        var count = kept.Count(one => one);
        var second = Best(new ShelfRules(0, shelf.Most ?? all, kept), best.Keep, looks, BestShare, OtherShare);
        var more = Best(new ShelfRules(count + 1, count + 1), best.Keep, looks, BestShare + OtherShare, OtherShare);
        var fewer = Best(new ShelfRules(count - 1, count - 1), best.Keep, looks, BestShare + (2 * OtherShare), OtherShare);
        progress?.Report(1);
        return ShelfWords.Answer(shelf, problem, best) with
        {
            SecondBest = Other(second, true),
            OneMore = Other(more, count < (shelf.Most ?? all)),
            OneFewer = Other(fewer, true),
            Doubt = worlds is null ? null : new ShelfDoubts(shelf, problem, worlds).Of(best, second, more, fewer, problem.Today()),
            Seconds = time.GetElapsedTime(began).TotalSeconds,
        };

        ShelfSolution? Best(ShelfRules rules, bool[] near, long mostLooks, double done, double share) => rules.Most < 0 || rules.Least > all
            ? null
            : search.Best(rules, near, mostLooks, part => progress?.Report(done + (share * Math.Min(part, 1))));

        OtherShelf? Other(ShelfSolution? other, bool within) => other is null ? null : ShelfWords.Other(problem, best, other, within);
    }
}
