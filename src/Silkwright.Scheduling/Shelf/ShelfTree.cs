namespace Silkwright.Scheduling.Shelf;

/// <summary>
/// Branch and bound over which emulsions are kept: every node is bounded by prices that go on from its parent's, and what the bound
/// leaves open is split at the emulsion whose share in the relaxed optimum is nearest to one half. Minimum use is not seen here.
/// docs/engines/shelf.md, section Method.
/// </summary>
/// <param name="problem">What to serve.</param>
/// <param name="rules">Which sets are asked for.</param>
/// <param name="cancel">Stops the work.</param>
internal sealed class ShelfTree(ShelfProblem problem, ShelfRules rules, CancellationToken cancel)
{
    /// <summary>Costs that differ by less than this share are the same: proven means equal to 9 digits.</summary>
    private const double SameCost = 1e-9;

    /// <summary>Nodes between two looks from above.</summary>
    private const int NodesBetweenLooks = 8;

    /// <summary>The share of the full step at which prices no longer move.</summary>
    private const double LastScale = 0.004;

    private static readonly Raising AtRoot = new(Steps: 1_000, Patience: 12, Scale: 1.2, StepsBetweenLooks: 25);
    private static readonly Raising AtNode = new(Steps: 40, Patience: 5, Scale: 0.6, StepsBetweenLooks: int.MaxValue);

    private readonly LocalSearch search = new(problem, rules);
    private readonly LagrangianBound bound = new(problem, rules);
    private readonly HashSet<string> seen = [];
    private readonly PriorityQueue<Node, (double Bound, int Turn)> open = new();
    private double proven = double.PositiveInfinity;
    private int turns;

    /// <summary>What the best set costs; infinite where none is found. [money/month]</summary>
    public double Cost { get; private set; } = double.PositiveInfinity;

    /// <summary>The best set.</summary>
    public bool[] Keep { get; } = new bool[problem.Choices];

    /// <summary>No set costs less; equal to the cost where nothing is left open. [money/month]</summary>
    public double Bound => Math.Min(proven, Cost);

    /// <summary>The prices of the highest bound at the root. [money/month]</summary>
    public double[] RootPrices { get; private set; } = [];

    /// <summary>What a set must cost less than to be better.</summary>
    private double Limit => LimitOf(Cost);

    /// <summary>What a set must cost less than to be better than one of this cost.</summary>
    public static double LimitOf(double cost) => cost - (SameCost * Math.Abs(cost));

    /// <summary>Searches until nothing is open, or the work is spent.</summary>
    /// <param name="near">A set to begin from.</param>
    /// <param name="prices">Prices to begin from; none: those of the set.</param>
    /// <param name="mostLooks">Most costs to look at: a count and no clock, so that the same case gives the same answer anywhere.</param>
    /// <param name="progress">Told the share of the work that is done.</param>
    public void Run(bool[] near, double[]? prices, long mostLooks, Action<double> progress)
    {
        LookFrom(near);
        if (!double.IsFinite(Cost))
            return;
        Visit(new Node(new Fixed[problem.Choices], prices ?? search.Prices(), new double[problem.Choices], double.NegativeInfinity), AtRoot);
        while (open.TryDequeue(out var node, out _) && node.Bound < Limit)
        {
            if (bound.Looks >= mostLooks)
            {
                proven = node.Bound;
                return;
            }

            Visit(node, AtNode);
            progress((double)bound.Looks / mostLooks);
        }
    }

    private void Visit(Node node, Raising raising)
    {
        bound.Begin(node.States, node.Prices, node.Averages);
        var closed = Raise(raising);
        if (RootPrices.Length == 0)
            RootPrices = [.. bound.BestPrices];
        if (closed)
            return;
        if (turns % NodesBetweenLooks == 0)
            LookFrom(bound.Selected);
        bound.Fix(Limit);
        var split = MostUndecided();
        if (split < 0)
            LookAt([.. bound.States.Select(state => state == Fixed.Kept)]);
        else
            Split(split, Math.Max(node.Bound, bound.Best));
    }

    /// <summary>Raises the bound.</summary>
    /// <returns>Nothing better is below this node.</returns>
    private bool Raise(Raising raising)
    {
        var (scale, idle) = (raising.Scale, 0);
        for (var step = 1; step <= raising.Steps && scale > LastScale; step++)
        {
            cancel.ThrowIfCancellationRequested();
            var before = bound.Best;
            var now = bound.Evaluate();
            if (bound.Best >= Limit)
                return true;
            idle = bound.Best > before + (SameCost * Math.Abs(before)) ? 0 : idle + 1;
            if (step % raising.StepsBetweenLooks == 0)
            {
                LookFrom(bound.Selected);
                bound.Fix(Limit);
            }

            if (idle >= raising.Patience)
            {
                (scale, idle) = (scale / 2, 0);
                bound.Return();
                now = bound.Evaluate();
            }

            bound.Step(Math.Max(Cost - now, 0), scale);
        }

        return bound.Best >= Limit;
    }

    /// <summary>The free choice that pays half of the time; -1 where none is free.</summary>
    private int MostUndecided()
    {
        var (most, least) = (-1, double.PositiveInfinity);
        for (var i = 0; i < bound.States.Length; i++)
        {
            if (bound.States[i] == Fixed.Free && Math.Abs(bound.Averages[i] - 0.5) is var off && off < least)
                (most, least) = (i, off);
        }

        return most;
    }

    private void Split(int choice, double below)
    {
        double[] prices = [.. bound.BestPrices];
        double[] averages = [.. bound.Averages];
        foreach (var state in averages[choice] >= 0.5 ? new[] { Fixed.Kept, Fixed.Dropped } : [Fixed.Dropped, Fixed.Kept])
        {
            Fixed[] states = [.. bound.States];
            Set(states, choice, state);
            open.Enqueue(new Node(states, prices, averages, below), (below, turns++));
        }
    }

    /// <summary>Where one size is kept, the others are not.</summary>
    private void Set(Fixed[] states, int choice, Fixed state)
    {
        for (var i = 0; i < states.Length && state == Fixed.Kept; i++)
            states[i] = problem.EmulsionOf[i] == problem.EmulsionOf[choice] ? Fixed.Dropped : states[i];
        states[choice] = state;
    }

    /// <summary>Betters a set not looked at before, and keeps what is found.</summary>
    private void LookFrom(bool[] set)
    {
        if (seen.Add(string.Concat(set.Select(kept => kept ? '1' : '0'))))
            KeepIfBetter(search.Improve(set, cancel), search.Keep);
    }

    private void LookAt(bool[] set)
    {
        if (rules.Allow(problem, set))
            KeepIfBetter(problem.CostOf(set, problem.Cheapest(set)), set);
    }

    private void KeepIfBetter(double cost, bool[] set)
    {
        if (cost >= Cost)
            return;
        Cost = cost;
        set.CopyTo(Keep, 0);
    }

    private sealed record Node(Fixed[] States, double[] Prices, double[] Averages, double Bound);

    /// <summary>How long and how boldly prices are moved.</summary>
    private sealed record Raising(int Steps, int Patience, double Scale, int StepsBetweenLooks);
}
