using Silkwright.Estimates;

namespace Silkwright.Scheduling.Shelf;

/// <summary>Which few emulsions to keep, and which job to make with which. docs/engines/shelf.md.</summary>
public static class ShelfChoice
{
    private const string Where = "shelf";

    /// <summary>The cheapest shelf with its proof, the next best, and what one emulsion more or fewer costs.</summary>
    /// <param name="shelf">The case.</param>
    /// <param name="time">Measures <see cref="ShelfAnswer.Seconds"/>; nothing else depends on it.</param>
    /// <param name="progress">Told the share of the work that is done.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="InputProblemException">Every fault of the case; or the jobs that no shelf within the rules serves.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static ShelfAnswer Of(ShelfCase shelf, TimeProvider time, IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        var began = time.GetTimestamp();
        var problems = new ProblemList();
        ShelfCaseCheck.Check(shelf, Where, problems);
        problems.ThrowIfAny();
        ShelfConflicts.ThrowIfUnserved(shelf);
        var problem = ShelfProblem.Of(shelf);
        var all = problem.Emulsions;
        progress?.Report(0);
        var best = ShelfSearch.Best(problem, new ShelfRules(0, shelf.Most ?? all), cancel)
            ?? throw new InputProblemException(ShelfConflicts.Of(shelf, problem, cancel));
        progress?.Report(0.4);
        var count = best.Keep.Count(kept => kept);
        var second = ShelfSearch.Best(problem, new ShelfRules(0, shelf.Most ?? all, best.Keep), cancel);
        progress?.Report(0.7);
        var more = count < all ? ShelfSearch.Best(problem, new ShelfRules(count + 1, count + 1), cancel) : null;
        progress?.Report(0.9);
        var fewer = count > 0 ? ShelfSearch.Best(problem, new ShelfRules(count - 1, count - 1), cancel) : null;
        progress?.Report(1);
        return ShelfWords.Answer(shelf, problem, best) with
        {
            SecondBest = Other(second),
            OneMore = Other(more),
            OneFewer = Other(fewer),
            Seconds = time.GetElapsedTime(began).TotalSeconds,
        };

        OtherShelf? Other(ShelfSolution? other) => other is null ? null : ShelfWords.Other(shelf, best, other);
    }
}
