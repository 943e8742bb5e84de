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
        var fixedCost = Sum(problem, best);
        var switching = Switching(shelf, problem, best);
        return new ShelfAnswer
        {
            Keep = Kept(problem, best.Keep),
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
            Currency = shelf.Currency,
            Notes = Notes(shelf),
        };
    }

    /// <param name="problem">The case in numbers.</param>
    /// <param name="best">The best shelf.</param>
    /// <param name="other">Another.</param>
    /// <param name="within">It keeps to the case's rules: no such shelf is below the bound of the best.</param>
    public static OtherShelf Other(ShelfProblem problem, ShelfSolution best, ShelfSolution other, bool within) => new(
        Kept(problem, other.Keep), other.Cost, other.Cost - best.Cost, Math.Min(within ? Math.Max(other.Bound, best.Bound) : other.Bound, other.Cost))
        {
            Containers = problem.Stands.Where((stand, i) => other.Keep[i] && stand.Container is not null).ToDictionary(stand => stand.Emulsion.Id, stand => stand.Container!.Grams),
        };

    private static IReadOnlyList<string> Kept(ShelfProblem problem, bool[] keep) => [.. problem.Stands.Where((_, i) => keep[i]).Select(stand => stand.Emulsion.Id)];

    private static double Sum(ShelfProblem problem, ShelfSolution best) => problem.Stands.Where((_, i) => best.Keep[i]).Sum(stand => stand.FixedCostPerMonth);

    private static double Switching(ShelfCase shelf, ShelfProblem problem, ShelfSolution best)
    {
        var kept = problem.EmulsionsOf(best.Keep);
        return shelf.Emulsions.Where((emulsion, e) => emulsion.KeptToday != kept[e]).Sum(emulsion => emulsion.SwitchingCostPerMonth);
    }

    private static List<ShelfMonth> Months(ShelfCase shelf, ShelfProblem problem, ShelfSolution best)
    {
        var always = Sum(problem, best) + Switching(shelf, problem, best);
        return [.. problem.Shares.Select((share, s) =>
        {
            var assignments = new Dictionary<string, string>(shelf.Jobs.Count);
            var cost = always;
            for (var j = 0; j < shelf.Jobs.Count; j++)
            {
                var job = shelf.Jobs[j];
                var stand = problem.Stands[best.Served[problem.PointOf[s][j]]];
                assignments[job.Id] = stand.Emulsion.Id;
                cost += ShelfProblem.Screens(shelf, s, job) * stand.CostOf(job)!.Value;
            }

            return new ShelfMonth(shelf.Scenarios.Count == 0 ? "" : shelf.Scenarios[s].Name, Percent * share, cost, assignments);
        })];
    }

    private static List<ShelfUse> Uses(ShelfCase shelf, ShelfProblem problem, ShelfSolution best, ShelfMonth likeliest)
    {
        var (screens, costs) = (new double[problem.Choices], new double[problem.Choices]);
        for (var s = 0; s < problem.Shares.Length; s++)
        {
            for (var j = 0; j < shelf.Jobs.Count; j++)
            {
                var (job, choice) = (shelf.Jobs[j], best.Served[problem.PointOf[s][j]]);
                var made = problem.Shares[s] * ShelfProblem.Screens(shelf, s, job);
                screens[choice] += made;
                costs[choice] += made * problem.Stands[choice].CostOf(job)!.Value;
            }
        }

        var jobs = likeliest.Assignments.Values.CountBy(emulsion => emulsion).ToDictionary();
        return [.. problem.Stands.Select((stand, i) => new ShelfUse(
            stand.Emulsion.Id, jobs.GetValueOrDefault(stand.Emulsion.Id), screens[i], stand.FixedCostPerMonth, costs[i])
        {
            Size = best.Keep[i] ? Size(problem, best, i) : null,
        }).Where((_, i) => best.Keep[i])];
    }

    /// <summary>The size kept, and the next best for the same jobs.</summary>
    private static ShelfSize? Size(ShelfProblem problem, ShelfSolution best, int kept)
    {
        if (problem.Stands[kept].Container is not { } size)
            return null;
        var next = Enumerable.Range(0, problem.Choices)
            .Where(other => other != kept && problem.EmulsionOf[other] == problem.EmulsionOf[kept])
            .Select(other => (Other: other, Extra: problem.FixedCosts[other] - problem.FixedCosts[kept]
                + best.Served.Select((choice, j) => choice == kept ? problem.Costs[other][j] - problem.Costs[kept][j] : 0).Sum()))
            .OrderBy(other => other.Extra)
            .FirstOrDefault((Other: -1, Extra: 0));
        return next.Other < 0 ? new ShelfSize(size.Grams, size.Price, null, null) : new ShelfSize(size.Grams, size.Price, problem.Stands[next.Other].Container!.Grams, next.Extra);
    }

    private static ShelfChange? Change(ShelfCase shelf, ShelfProblem problem, ShelfSolution best)
    {
        var kept = problem.EmulsionsOf(best.Keep);
        if (!shelf.Emulsions.Any(emulsion => emulsion.KeptToday))
            return null;
        var today = problem.Today();
        return new ShelfChange(
            [.. shelf.Emulsions.Where((e, i) => e.KeptToday && !kept[i]).Select(e => e.Id)],
            [.. shelf.Emulsions.Where((e, i) => !e.KeptToday && kept[i]).Select(e => e.Id)],
            today?.Cost,
            today?.Cost - best.Cost)
        {
            Resize = [.. problem.Stands.Where((stand, i) => best.Keep[i] && stand.Emulsion.KeptToday && stand.Size > 0)
                .Select(stand => new ShelfResize(stand.Emulsion.Id, stand.Emulsion.Containers[0].Grams, stand.Container!.Grams))],
        };
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
