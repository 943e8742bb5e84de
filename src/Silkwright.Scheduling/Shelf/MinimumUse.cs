namespace Silkwright.Scheduling.Shelf;

/// <summary>Minimum use of what is kept: whether it holds, and a shelf near a given one for which it does.</summary>
internal static class MinimumUse
{
    /// <summary>A shortfall smaller than this is rounding. [screens/month]</summary>
    private const double Rounding = 1e-9;

    public static bool Holds(ShelfProblem problem, bool[] keep, int[] served) => MostShort(problem, keep, Used(problem, served)) is null;

    /// <summary>The cheapest shelf found by moving jobs to where too few are, and by giving up what stays too little used.</summary>
    /// <returns>None where no such shelf is found, which does not say that there is none.</returns>
    public static ShelfSolution? Near(ShelfProblem problem, ShelfRules rules, bool[] set)
    {
        ShelfSolution? best = null;
        bool[] keep = [.. set];
        while (true)
        {
            var served = problem.Cheapest(keep);
            if (served.Contains(-1))
                return best;
            if (MostShort(problem, keep, Used(problem, served)) is not var (giveUp, _))
                giveUp = -1;
            if (rules.Allow(problem, keep) && Shift(problem, keep, served) && problem.CostOf(keep, served) is var cost && cost < (best?.Cost ?? double.PositiveInfinity))
                best = new ShelfSolution([.. keep], served, cost, double.NegativeInfinity);
            if (giveUp < 0)
                return best;
            keep[giveUp] = false;
        }
    }

    /// <summary>Moves the points that cost least to move for each screen won, until nothing is short.</summary>
    private static bool Shift(ShelfProblem problem, bool[] keep, int[] served)
    {
        var used = Used(problem, served);
        while (MostShort(problem, keep, used) is var (i, s))
        {
            var wanted = problem.Minimums[i] - used[s][i];
            var (moved, least) = (-1, double.PositiveInfinity);
            for (var j = 0; j < served.Length; j++)
            {
                var (from, load) = (served[j], problem.Loads[j]);
                if (problem.ScenarioOf[j] != s || from == i || load <= 0 || used[s][from] - load < problem.Minimums[from])
                    continue;
                var each = (problem.Costs[i][j] - problem.Costs[from][j]) / Math.Min(load, wanted);
                if (each < least)
                    (moved, least) = (j, each);
            }

            if (moved < 0)
                return false;
            used[s][served[moved]] -= problem.Loads[moved];
            used[s][i] += problem.Loads[moved];
            served[moved] = i;
        }

        return true;
    }

    private static double[][] Used(ShelfProblem problem, int[] served)
    {
        var used = problem.Shares.Select(_ => new double[problem.Choices]).ToArray();
        for (var j = 0; j < served.Length; j++)
            used[problem.ScenarioOf[j]][served[j]] += problem.Loads[j];
        return used;
    }

    /// <summary>The kept emulsion that is shortest of its minimum, and in which scenario.</summary>
    private static (int Emulsion, int Scenario)? MostShort(ShelfProblem problem, bool[] keep, double[][] used)
    {
        (int, int)? most = null;
        var shortest = Rounding;
        for (var s = 0; s < used.Length; s++)
        {
            for (var i = 0; i < keep.Length; i++)
            {
                if (keep[i] && problem.Minimums[i] - used[s][i] > shortest)
                    (most, shortest) = ((i, s), problem.Minimums[i] - used[s][i]);
            }
        }

        return most;
    }
}
