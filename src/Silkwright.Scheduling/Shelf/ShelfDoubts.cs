using Silkwright.Estimates;

namespace Silkwright.Scheduling.Shelf;

/// <summary>
/// Prices shelves in many possible worlds, each chosen and its jobs placed by what is expected: intervals of costs and of differences, in
/// which what the shelves share falls out. docs/engines/shelf.md, equations 11 and 12.
/// </summary>
/// <param name="shelf">The case.</param>
/// <param name="problem">The case in numbers.</param>
/// <param name="worlds">What its costs may turn out to be.</param>
internal sealed class ShelfDoubts(ShelfCase shelf, ShelfProblem problem, IShelfWorlds worlds)
{
    /// <summary>Share of worlds below the interval, and above it.</summary>
    private const double Tail = 0.05;

    /// <summary>Costs nearer than this share are the same.</summary>
    private const double SameCost = 1e-9;

    private readonly Dictionary<(int Job, int Choice), double[]> perScreen = [];

    /// <param name="best">The shelf to keep.</param>
    /// <param name="second">The next best.</param>
    /// <param name="more">One more.</param>
    /// <param name="fewer">One fewer.</param>
    /// <param name="today">Today's.</param>
    public ShelfDoubt Of(ShelfSolution best, ShelfSolution? second, ShelfSolution? more, ShelfSolution? fewer, ShelfSolution? today)
    {
        var kept = Costs(best);
        var others = new[] { second, more, fewer, today }.Select(other => other is null ? null : Costs(other)).ToArray();
        var cheapest = Enumerable.Range(0, kept.Length).Count(w => others.All(other => other is null || kept[w] <= other[w] + (SameCost * Math.Abs(kept[w]))));
        return new ShelfDoubt(Interval(best.Cost, kept), 100.0 * cheapest / kept.Length)
        {
            SecondBest = Extra(second, others[0]),
            OneMore = Extra(more, others[1]),
            OneFewer = Extra(fewer, others[2]),
            SavesPerMonth = Extra(today, others[3]),
        };

        Estimate? Extra(ShelfSolution? other, double[]? costs) =>
            other is null ? null : Interval(other.Cost - best.Cost, [.. costs!.Select((cost, w) => cost - kept[w])]);
    }

    /// <summary>What a shelf costs in each world. [money/month]</summary>
    private double[] Costs(ShelfSolution solution)
    {
        var emulsions = problem.EmulsionsOf(solution.Keep);
        var switching = shelf.Emulsions.Where((emulsion, e) => emulsion.KeptToday != emulsions[e]).Sum(emulsion => emulsion.SwitchingCostPerMonth);
        var costs = new double[worlds.Count];
        for (var w = 0; w < costs.Length; w++)
            costs[w] = switching + problem.Stands.Where((_, i) => solution.Keep[i]).Sum(stand => worlds.Keeping(stand, w));
        for (var j = 0; j < shelf.Jobs.Count; j++)
        {
            var job = shelf.Jobs[j];
            foreach (var month in problem.Shares.Select((share, s) => (Screens: share * ShelfProblem.Screens(shelf, s, job), Choice: solution.Served[problem.PointOf[s][j]])).GroupBy(month => month.Choice))
            {
                var (screens, each) = (month.Sum(part => part.Screens), PerScreen(j, month.Key));
                for (var w = 0; w < costs.Length; w++)
                    costs[w] += screens * each[w];
            }
        }

        return costs;
    }

    private double[] PerScreen(int job, int choice)
    {
        if (!perScreen.TryGetValue((job, choice), out var costs))
            costs = perScreen[(job, choice)] = [.. Enumerable.Range(0, worlds.Count).Select(w => worlds.PerScreen(shelf.Jobs[job], problem.Stands[choice], w))];
        return costs;
    }

    /// <summary>The middle nine tenths of the worlds; the value is the one the choice was made by.</summary>
    private Estimate Interval(double value, double[] costs)
    {
        var sorted = costs.Order().ToArray();
        var (low, high) = (sorted[(int)(Tail * (sorted.Length - 1))], sorted[(int)((1 - Tail) * (sorted.Length - 1))]);
        return new Estimate(value, Math.Min(low, value), Math.Max(high, value), (Ground)Math.Max((int)Ground.Model, (int)worlds.Ground));
    }
}
