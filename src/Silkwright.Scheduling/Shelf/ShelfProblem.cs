namespace Silkwright.Scheduling.Shelf;

/// <summary>
/// A case as numbers: points to be served, each by one emulsion that is kept. A point is a job, or many equal ones; where minimum use is
/// asked for, a job in one scenario. docs/engines/shelf.md, section Model.
/// </summary>
internal sealed class ShelfProblem
{
    private readonly ShelfStand[] choices;

    private ShelfProblem(ShelfStand[] choices, double[][] costs, double[] fixedCosts, double constant)
    {
        this.choices = choices;
        Costs = costs;
        FixedCosts = fixedCosts;
        Constant = constant;
        EmulsionOf = [.. choices.Select(choice => choice.Of)];
        Emulsions = EmulsionOf[^1] + 1;
    }

    /// <summary>What could be kept: each emulsion in each of its sizes, those of one emulsion beside each other.</summary>
    public IReadOnlyList<ShelfStand> Stands => choices;

    /// <summary>By choice: its emulsion.</summary>
    public int[] EmulsionOf { get; }

    /// <summary>By choice, then point: what serving the point costs a month; infinite where it can't. Weighted by scenario. [money/month]</summary>
    public double[][] Costs { get; }

    /// <summary>By choice: what keeping it adds, switching taken in; below 0 where giving it up costs more than keeping it. [money/month]</summary>
    public double[] FixedCosts { get; }

    /// <summary>What every shelf costs: giving up all that is kept today. [money/month]</summary>
    public double Constant { get; }

    /// <summary>The point of a job in a scenario: [scenario][job]; one scenario where none are given.</summary>
    public required int[][] PointOf { get; init; }

    /// <summary>By choice: least screens a month if kept.</summary>
    public required double[] Minimums { get; init; }

    /// <summary>By point: screens a month, for the minimums; empty where there are none.</summary>
    public required double[] Loads { get; init; }

    /// <summary>By point: its scenario, for the minimums; empty where there are none.</summary>
    public required int[] ScenarioOf { get; init; }

    /// <summary>By scenario: its share. Sums to 1.</summary>
    public required double[] Shares { get; init; }

    /// <summary>How many emulsions there are.</summary>
    public int Emulsions { get; }

    /// <summary>How many choices: emulsions, each in each of its sizes.</summary>
    public int Choices => FixedCosts.Length;

    /// <summary>Some emulsion is sold in several sizes.</summary>
    public bool HasSizes => Choices > Emulsions;

    public int Points => Costs.Length == 0 ? 0 : Costs[0].Length;

    public bool HasMinimums => Loads.Length > 0;

    public static ShelfProblem Of(ShelfCase shelf)
    {
        var choices = ShelfStand.AllOf(shelf);
        var minimums = choices.Select(choice => choice.Emulsion.MinimumScreensPerMonth).ToArray();
        var shares = Weights(shelf);
        var points = minimums.Any(minimum => minimum > 0) ? JobsByScenario(shelf, shares) : EqualJobs(shelf, choices, shares);
        return new ShelfProblem(
            choices,
            CostColumns(choices, points),
            [.. choices.Select(choice => choice.FixedCostPerMonth + (choice.Emulsion.KeptToday ? -choice.Emulsion.SwitchingCostPerMonth : choice.Emulsion.SwitchingCostPerMonth))],
            shelf.Emulsions.Where(e => e.KeptToday).Sum(e => e.SwitchingCostPerMonth))
        {
            PointOf = points.PointOf,
            Minimums = minimums,
            Loads = points.Loads,
            ScenarioOf = points.ScenarioOf,
            Shares = shares,
        };
    }

    /// <summary>By emulsion: whether a set keeps it, in whatever size.</summary>
    public bool[] EmulsionsOf(bool[] keep)
    {
        var emulsions = new bool[Emulsions];
        for (var i = 0; i < keep.Length; i++)
            emulsions[EmulsionOf[i]] |= keep[i];
        return emulsions;
    }

    /// <summary>Each point on its cheapest kept emulsion; -1 where none of them serves it.</summary>
    public int[] Cheapest(bool[] keep)
    {
        var best = new int[Points];
        Array.Fill(best, -1);
        for (var i = 0; i < Choices; i++)
        {
            if (!keep[i])
                continue;
            var costs = Costs[i];
            for (var j = 0; j < costs.Length; j++)
            {
                if (costs[j] < (best[j] < 0 ? double.PositiveInfinity : Costs[best[j]][j]))
                    best[j] = i;
            }
        }

        return best;
    }

    /// <summary>Today's shelf, each point on its cheapest emulsion there; none where nothing is kept today or it does not serve all.</summary>
    public ShelfSolution? Today()
    {
        bool[] keep = [.. choices.Select(choice => choice.KeptToday)];
        var served = Cheapest(keep);
        return keep.Contains(true) && !served.Contains(-1) ? new ShelfSolution(keep, served, CostOf(keep, served), double.NegativeInfinity) : null;
    }

    /// <summary>What a shelf costs with its points where they are; infinite where a point is served by none.</summary>
    public double CostOf(bool[] keep, int[] served)
    {
        var cost = Constant;
        for (var i = 0; i < Choices; i++)
            cost += keep[i] ? FixedCosts[i] : 0;
        for (var j = 0; j < served.Length; j++)
            cost += served[j] < 0 ? double.PositiveInfinity : Costs[served[j]][j];
        return cost;
    }

    /// <summary>Screens of a job in a scenario: what the scenario says, or else the job's own figure.</summary>
    public static double Screens(ShelfCase shelf, int scenario, ShelfJob job) =>
        shelf.Scenarios.Count > 0 && shelf.Scenarios[scenario].ScreensPerMonth.TryGetValue(job.Id, out var screens) ? screens : job.ScreensPerMonth;

    private static double[] Weights(ShelfCase shelf)
    {
        var total = shelf.Scenarios.Sum(scenario => scenario.Weight);
        return shelf.Scenarios.Count == 0 ? [1] : [.. shelf.Scenarios.Select(scenario => scenario.Weight / total)];
    }

    /// <summary>Without minimums a point's emulsion is the cheapest kept whatever the month: expected screens say it all, and equal jobs are one.</summary>
    private static PointSet EqualJobs(ShelfCase shelf, ShelfStand[] choices, double[] shares)
    {
        var byCosts = new Dictionary<ShelfJob, int>(new SameCosts(choices));
        var (first, screens) = (new List<ShelfJob>(), new List<double>());
        var pointOf = new int[shelf.Jobs.Count];
        for (var j = 0; j < pointOf.Length; j++)
        {
            var job = shelf.Jobs[j];
            if (!byCosts.TryGetValue(job, out pointOf[j]))
            {
                pointOf[j] = byCosts[job] = first.Count;
                first.Add(job);
                screens.Add(0);
            }

            screens[pointOf[j]] += shares.Select((share, s) => share * Screens(shelf, s, job)).Sum();
        }

        return new PointSet(first, [.. screens], [.. shares.Select(_ => pointOf)], [], []);
    }

    private static PointSet JobsByScenario(ShelfCase shelf, double[] shares)
    {
        var jobs = shelf.Jobs.Count;
        var loads = shares.SelectMany((_, s) => shelf.Jobs.Select(job => Screens(shelf, s, job))).ToArray();
        return new PointSet(
            [.. shares.SelectMany(_ => shelf.Jobs)],
            [.. loads.Select((load, at) => shares[at / jobs] * load)],
            [.. shares.Select((_, s) => Enumerable.Range(s * jobs, jobs).ToArray())],
            loads,
            [.. shares.SelectMany((_, s) => Enumerable.Repeat(s, jobs))]);
    }

    private static double[][] CostColumns(ShelfStand[] choices, PointSet points) => [.. choices.Select(choice =>
    {
        var column = new double[points.Jobs.Count];
        for (var j = 0; j < column.Length; j++)
        {
            var job = points.Jobs[j];
            var serves = job.MustStayOn is null || job.MustStayOn == choice.Emulsion.Id;
            column[j] = serves && choice.CostOf(job) is { } cost ? points.Screens[j] * cost : double.PositiveInfinity;
        }

        return column;
    })];

    private sealed record PointSet(IReadOnlyList<ShelfJob> Jobs, double[] Screens, int[][] PointOf, double[] Loads, int[] ScenarioOf);

    /// <summary>Jobs are equal when each screen of them costs the same with every emulsion and they are bound to the same one.</summary>
    private sealed class SameCosts(ShelfStand[] choices) : IEqualityComparer<ShelfJob>
    {
        public bool Equals(ShelfJob? x, ShelfJob? y) =>
            x!.MustStayOn == y!.MustStayOn && x.Costs.Count == y.Costs.Count
            && choices.All(choice => Nullable.Equals(choice.CostOf(x), choice.CostOf(y)));

        public int GetHashCode(ShelfJob job)
        {
            var hash = default(HashCode);
            foreach (var choice in choices)
                hash.Add(choice.CostOf(job));
            return hash.ToHashCode();
        }
    }
}
