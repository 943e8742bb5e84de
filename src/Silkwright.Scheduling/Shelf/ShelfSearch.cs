namespace Silkwright.Scheduling.Shelf;

/// <summary>
/// Finds the cheapest shelf under some rules, and proves it. Branch and bound does it alone where no use is too small; what minimum use
/// leaves open is handed to the library's solver. docs/engines/shelf.md, section Method.
/// </summary>
/// <param name="problem">What to serve.</param>
/// <param name="cancel">Stops the work.</param>
internal sealed class ShelfSearch(ShelfProblem problem, CancellationToken cancel)
{
    /// <summary>Most nodes of the solver's tree.</summary>
    private const long MostNodes = 100_000;

    /// <summary>Most services handed to the solver: beyond, its memory and time are out of proportion, and the bound stands as it is.</summary>
    private const int MostServices = 250_000;

    /// <summary>What the last search found: the next begins there.</summary>
    private double[]? prices;

    /// <summary>The cheapest shelf; none where no set that the rules allow serves every point.</summary>
    /// <param name="rules">Which sets are asked for.</param>
    /// <param name="near">A set that is likely to be close.</param>
    /// <param name="mostLooks">Most costs to look at.</param>
    /// <param name="progress">Told the share of the work that is done.</param>
    /// <exception cref="InvalidOperationException">The solver's work ended before it found a shelf or that there is none.</exception>
    public ShelfSolution? Best(ShelfRules rules, bool[] near, long mostLooks, Action<double> progress)
    {
        var tree = new ShelfTree(problem, rules, cancel);
        tree.Run(near, prices, mostLooks, progress);
        if (!double.IsFinite(tree.Cost))
        {
            if (ShelfCover.Find(problem, rules, cancel) is not { } cover)
                return null;
            tree.Run(cover, prices, mostLooks, progress);
        }

        prices = tree.RootPrices;
        var served = problem.Cheapest(tree.Keep);
        return problem.HasMinimums && !MinimumUse.Holds(problem, tree.Keep, served)
            ? WithMinimums(rules, tree)
            : new ShelfSolution(tree.Keep, served, tree.Cost, tree.Bound);
    }

    /// <summary>The best set without minimums breaks one: its cost is a bound, and the solver closes the rest.</summary>
    private ShelfSolution? WithMinimums(ShelfRules rules, ShelfTree tree)
    {
        var best = MinimumUse.Near(problem, rules, tree.Keep);
        var limit = best is null ? double.PositiveInfinity : ShelfTree.LimitOf(best.Cost);
        var bound = new LagrangianBound(problem, rules);
        bound.Begin(new Fixed[problem.Choices], tree.RootPrices, new double[problem.Choices]);
        bound.Evaluate();
        using var model = new ShelfModel(problem, rules, bound.Fix(limit));
        if (best is not null && model.Services > MostServices)
            return best with { Bound = tree.Bound };
        var found = model.Solve(MostNodes, out var proven, cancel);
        if (found is var (keep, served) && problem.CostOf(keep, served) is var cost && cost < (best?.Cost ?? double.PositiveInfinity))
            best = new ShelfSolution(keep, served, cost, double.NegativeInfinity);
        if (best is null && !double.IsPositiveInfinity(proven))
            throw new InvalidOperationException($"The solver found no shelf within {MostNodes} nodes, nor that there is none.");

        // Outside the model nothing is cheaper than the limit; inside nothing than what the solver has proven.
        return best is null ? null : best with { Bound = proven >= ShelfTree.LimitOf(best.Cost) ? best.Cost : Math.Max(tree.Bound, proven) };
    }
}
