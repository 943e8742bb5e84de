namespace Silkwright.Scheduling.Shelf;

/// <summary>Finds the cheapest shelf under some rules, and proves it.</summary>
internal static class ShelfSearch
{
    /// <summary>Most nodes of the solver's tree: work is bounded by a count, so that the same case gives the same answer anywhere.</summary>
    private const long MostNodes = 100_000;

    /// <summary>The cheapest shelf; none where no set that the rules allow serves every point.</summary>
    public static ShelfSolution? Best(ShelfProblem problem, ShelfRules rules, CancellationToken cancel)
    {
        using var model = new ShelfModel(problem, rules, ShelfFixing.Nothing(problem));
        return model.Solve(MostNodes, out var bound, cancel) is var (keep, served) ? new ShelfSolution(keep, served, problem.CostOf(keep, served), bound) : null;
    }
}
