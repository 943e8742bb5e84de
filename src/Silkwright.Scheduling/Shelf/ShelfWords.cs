using Silkwright.Estimates;

namespace Silkwright.Scheduling.Shelf;

/// <summary>Turns solutions in numbers back into the case's emulsions and jobs.</summary>
internal static class ShelfWords
{
    private const double Percent = 100;

    /// <summary>Keeps the gap finite where a shelf costs nothing. [money/month]</summary>
    private const double LeastCost = 1e-9;

    public static ShelfAnswer Answer(ShelfCase shelf, ShelfProblem problem, ShelfSolution best)
    {
        var months = Months(shelf, problem, best);
        var likeliest = Array.IndexOf(problem.Shares, problem.Shares.Max());
        var fixedCost = Sum(shelf, best, emulsion => emulsion.FixedCostPerMonth);
        var switching = Switching(shelf, best);
        return new ShelfAnswer
        {
            Keep = Kept(shelf, best.Keep),
            Assignments = months[likeliest].Assignments,
            Uses = Uses(shelf, problem, best, months[likeliest]),
            MonthlyCost = best.Cost,
            FixedCostPerMonth = fixedCost,
            SwitchingCostPerMonth = switching,
            RunningCostPerMonth = months.Sum(month => month.WeightPercent / Percent * (month.MonthlyCost - fixedCost - switching)),
            Bound = Math.Min(best.Bound, best.Cost),
            GapPercent = best.Bound >= best.Cost ? 0 : Percent * (best.Cost - best.Bound) / Math.Max(Math.Abs(best.Cost), LeastCost),
            Seconds = 0,
            Change = Change(shelf, problem, best),
            Months = shelf.Scenarios.Count == 0 ? [] : months,
            Notes = Notes(shelf),
        };
    }

    /// <param name="shelf">The case.</param>
    /// <param name="best">The best shelf.</param>
    /// <param name="other">Another.</param>
    /// <param name="within">It keeps to the case's rules: no such shelf is below the bound of the best.</param>
    public static OtherShelf Other(ShelfCase shelf, ShelfSolution best, ShelfSolution other, bool within) => new(
        Kept(shelf, other.Keep), other.Cost, other.Cost - best.Cost, Math.Min(within ? Math.Max(other.Bound, best.Bound) : other.Bound, other.Cost));

    private static IReadOnlyList<string> Kept(ShelfCase shelf, bool[] keep) => [.. shelf.Emulsions.Where((_, i) => keep[i]).Select(emulsion => emulsion.Id)];

    private static double Sum(ShelfCase shelf, ShelfSolution best, Func<ShelfEmulsion, double> cost) => shelf.Emulsions.Where((_, i) => best.Keep[i]).Sum(cost);

    private static double Switching(ShelfCase shelf, ShelfSolution best) =>
        shelf.Emulsions.Where((emulsion, i) => emulsion.KeptToday != best.Keep[i]).Sum(emulsion => emulsion.SwitchingCostPerMonth);

    private static List<ShelfMonth> Months(ShelfCase shelf, ShelfProblem problem, ShelfSolution best)
    {
        var always = Sum(shelf, best, emulsion => emulsion.FixedCostPerMonth) + Switching(shelf, best);
        return [.. problem.Shares.Select((share, s) =>
        {
            var assignments = new Dictionary<string, string>(shelf.Jobs.Count);
            var cost = always;
            for (var j = 0; j < shelf.Jobs.Count; j++)
            {
                var job = shelf.Jobs[j];
                var emulsion = assignments[job.Id] = shelf.Emulsions[best.Served[problem.PointOf[s][j]]].Id;
                cost += ShelfProblem.Screens(shelf, s, job) * job.Costs[emulsion];
            }

            return new ShelfMonth(shelf.Scenarios.Count == 0 ? "" : shelf.Scenarios[s].Name, Percent * share, cost, assignments);
        })];
    }

    private static List<ShelfUse> Uses(ShelfCase shelf, ShelfProblem problem, ShelfSolution best, ShelfMonth likeliest)
    {
        var (screens, costs) = (new double[problem.Emulsions], new double[problem.Emulsions]);
        for (var s = 0; s < problem.Shares.Length; s++)
        {
            for (var j = 0; j < shelf.Jobs.Count; j++)
            {
                var (job, emulsion) = (shelf.Jobs[j], best.Served[problem.PointOf[s][j]]);
                var made = problem.Shares[s] * ShelfProblem.Screens(shelf, s, job);
                screens[emulsion] += made;
                costs[emulsion] += made * job.Costs[shelf.Emulsions[emulsion].Id];
            }
        }

        var jobs = likeliest.Assignments.Values.CountBy(emulsion => emulsion).ToDictionary();
        return [.. shelf.Emulsions.Select((e, i) => new ShelfUse(e.Id, jobs.GetValueOrDefault(e.Id), screens[i], e.FixedCostPerMonth, costs[i])).Where((_, i) => best.Keep[i])];
    }

    private static ShelfChange? Change(ShelfCase shelf, ShelfProblem problem, ShelfSolution best)
    {
        var today = shelf.Emulsions.Select(emulsion => emulsion.KeptToday).ToArray();
        if (!today.Any(kept => kept))
            return null;
        var cost = problem.CostOf(today, problem.Cheapest(today));
        return new ShelfChange(
            [.. shelf.Emulsions.Where((e, i) => e.KeptToday && !best.Keep[i]).Select(e => e.Id)],
            [.. shelf.Emulsions.Where((e, i) => !e.KeptToday && best.Keep[i]).Select(e => e.Id)],
            double.IsFinite(cost) ? cost : null,
            double.IsFinite(cost) ? cost - best.Cost : null);
    }

    private static List<Note> Notes(ShelfCase shelf)
    {
        var notes = new List<Note>();
        if (shelf.Emulsions.Any(emulsion => emulsion.KeptToday && emulsion.MinimumScreensPerMonth > 0))
            notes.Add(new Note("Today's shelf is priced with every job on its cheapest emulsion there, whether or not each is used as much as it should be."));
        if (shelf.Emulsions.Any(emulsion => emulsion.SwitchingCostPerMonth > 0) && !shelf.Emulsions.Any(emulsion => emulsion.KeptToday))
            notes.Add(new Note("No emulsion is said to be kept today: taking on any of them is priced as a change."));
        return notes;
    }
}
