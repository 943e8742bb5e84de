using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Silkwright.Scheduling.Shelf;

/// <summary>
/// Betters a set of emulsions by adding one, dropping one or exchanging two, the best move first, until none helps. Every point is on its
/// cheapest kept emulsion; minimum use is not seen here. docs/engines/shelf.md, section Method.
/// </summary>
internal sealed class LocalSearch
{
    /// <summary>A gain smaller than this share of the cost is rounding.</summary>
    private const double LeastGain = 1e-10;

    private readonly ShelfProblem problem;
    private readonly ShelfRules rules;
    private readonly double unserved;
    private readonly int[] nearest;
    private readonly double[] first;
    private readonly double[] second;
    private readonly double[] losses;
    private readonly Move[] moves;
    private readonly int[] sizeKept;
    private int count;
    private int differing;

    public LocalSearch(ShelfProblem problem, ShelfRules rules)
    {
        (this.problem, this.rules) = (problem, rules);
        unserved = Unserved(problem);
        Keep = new bool[problem.Choices];
        nearest = new int[problem.Points];
        first = new double[problem.Points];
        second = new double[problem.Points];
        losses = new double[problem.Choices];
        moves = new Move[problem.Choices];
        sizeKept = new int[problem.Emulsions];
    }

    public bool[] Keep { get; }

    /// <summary>With a charge for every point not served that is more than any saving. [money/month]</summary>
    private double Cost { get; set; }

    /// <summary>Betters a set.</summary>
    /// <param name="start">Any set; sizes that the rules forbid are put right first.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <returns>What the set found costs; infinite where it is not allowed or leaves a point unserved.</returns>
    public double Improve(bool[] start, CancellationToken cancel)
    {
        start.CopyTo(Keep, 0);
        Price();
        while (true)
        {
            cancel.ThrowIfCancellationRequested();
            var mustGrow = count < rules.Least;
            var mustShrink = count > rules.Most;
            var move = BestMove(mustGrow, mustShrink);
            var mustMove = mustGrow || mustShrink || (rules.Not is not null && differing == 0);
            if (!(move.Change < (mustMove ? double.PositiveInfinity : -LeastGain * Math.Abs(Cost))))
                break;
            if (move.In >= 0)
                Keep[move.In] = true;
            if (move.Out >= 0)
                Keep[move.Out] = false;
            Price();
        }

        return rules.Allow(problem, Keep) ? problem.CostOf(Keep, problem.Cheapest(Keep)) : double.PositiveInfinity;
    }

    /// <summary>Prices for the bound to begin with: what serves a point now and its part of the fixed cost, but not more than its second choice.</summary>
    public double[] Prices()
    {
        var members = new int[problem.Choices];
        foreach (var emulsion in nearest)
            members[Math.Max(0, emulsion)]++;
        return [.. first.Select((cost, j) => nearest[j] < 0 ? 0 : Math.Min(second[j], cost + (Math.Max(0, problem.FixedCosts[nearest[j]]) / members[nearest[j]])))];
    }

    private static double Unserved(ShelfProblem problem)
    {
        var most = new double[problem.Points];
        foreach (var costs in problem.Costs)
        {
            for (var j = 0; j < most.Length; j++)
                most[j] = double.IsFinite(costs[j]) ? Math.Max(most[j], costs[j]) : most[j];
        }

        return 1 + most.Sum() + problem.FixedCosts.Sum(Math.Abs);
    }

    /// <summary>Finds each point's cheapest and second cheapest, and what dropping each kept emulsion adds.</summary>
    private void Price()
    {
        Array.Fill(nearest, -1);
        Array.Fill(first, unserved);
        Array.Fill(second, unserved);
        Array.Clear(losses);
        Array.Fill(sizeKept, -1);
        (count, Cost) = (0, problem.Constant);
        for (var i = 0; i < Keep.Length; i++)
        {
            if (!Keep[i])
                continue;
            sizeKept[problem.EmulsionOf[i]] = i;
            count++;
            Cost += problem.FixedCosts[i];
            losses[i] = -problem.FixedCosts[i];
            Rank(i, problem.Costs[i]);
        }

        differing = rules.Not is { } not ? Enumerable.Range(0, not.Length).Count(e => not[e] != (sizeKept[e] >= 0)) : 0;
        for (var j = 0; j < nearest.Length; j++)
        {
            Cost += first[j];
            if (nearest[j] >= 0)
                losses[nearest[j]] += second[j] - first[j];
        }
    }

    private void Rank(int i, double[] costs)
    {
        for (var j = 0; j < costs.Length; j++)
        {
            if (costs[j] < first[j])
            {
                second[j] = first[j];
                (first[j], nearest[j]) = (costs[j], i);
            }
            else if (costs[j] < second[j])
            {
                second[j] = costs[j];
            }
        }
    }

    private Move BestMove(bool mustGrow, bool mustShrink)
    {
        Work.ForEachEmulsion(problem, i => moves[i] = Keep[i] ? Dropping(i, mustGrow) : Adding(i, mustGrow, mustShrink));
        var best = new Move(-1, -1, double.PositiveInfinity);
        foreach (var move in moves)
            best = move.Change < best.Change ? move : best;
        return best;
    }

    private Move Dropping(int i, bool mustGrow) =>
        mustGrow || count <= rules.Least || Reaches(-1, i) ? Move.None : new Move(-1, i, losses[i]);

    /// <summary>The better of adding an emulsion and exchanging another for it (Whitaker's reckoning: one look at each cost does for all exchanges).</summary>
    private Move Adding(int i, bool mustGrow, bool mustShrink)
    {
        if (mustShrink)
            return Move.None;
        var costs = problem.Costs[i];
        // By kept emulsion, from 1; 0 stands for points that nothing serves yet.
        var exchanged = new double[losses.Length + 1];
        var adds = problem.FixedCosts[i];
        var c = MemoryMarshal.Cast<double, Vector512<double>>(costs.AsSpan());
        var limit = MemoryMarshal.Cast<double, Vector512<double>>(second.AsSpan())[..c.Length];
        for (var at = 0; at < c.Length; at++)
        {
            // Few points gain by it: those of eight that do are picked out at one look.
            for (var gaining = Vector512.LessThan(c[at], limit[at]).ExtractMostSignificantBits(); gaining != 0; gaining &= gaining - 1)
                {
                var j = (at * Vector512<double>.Count) + BitOperations.TrailingZeroCount(gaining);
                Gain(j, costs[j], exchanged, ref adds);
            }
        }

        for (var j = c.Length * Vector512<double>.Count; j < costs.Length; j++)
        {
            if (costs[j] < second[j])
                Gain(j, costs[j], exchanged, ref adds);
        }

        // Another size of an emulsion that is kept can only take its place.
        var sibling = sizeKept[problem.EmulsionOf[i]];
        if (sibling >= 0)
            return mustGrow || Reaches(i, sibling) ? Move.None : new Move(i, sibling, adds + losses[sibling] + exchanged[sibling + 1]);
        var best = count < rules.Most && !Reaches(i, -1) ? new Move(i, -1, adds) : Move.None;
        for (var r = 0; r < losses.Length && !mustGrow; r++)
        {
            if (Keep[r] && adds + losses[r] + exchanged[r + 1] < best.Change && !Reaches(i, r))
                best = new Move(i, r, adds + losses[r] + exchanged[r + 1]);
        }

        return best;
    }

    /// <summary>What a point gains where the emulsion comes in, and what it loses less where its own goes out then.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void Gain(int j, double cost, double[] exchanged, ref double adds)
    {
        adds -= Math.Max(0, first[j] - cost);
        exchanged[nearest[j] + 1] -= second[j] - Math.Max(cost, first[j]);
    }

    /// <summary>A move would end at the set that is not asked for.</summary>
    private bool Reaches(int added, int dropped)
    {
        if (rules.Not is not { } not)
            return false;
        var (taken, given) = (added < 0 ? -1 : problem.EmulsionOf[added], dropped < 0 ? -1 : problem.EmulsionOf[dropped]);
        var left = differing;
        if (taken >= 0 && taken != given)
            left += not[taken] ? -1 : 1;
        if (given >= 0 && taken != given)
            left += not[given] ? 1 : -1;
        return left == 0;
    }

    private readonly record struct Move(int In, int Out, double Change)
    {
        public static Move None => new(-1, -1, double.PositiveInfinity);
    }
}
