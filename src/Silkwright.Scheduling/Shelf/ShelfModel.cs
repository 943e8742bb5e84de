using Google.OrTools.LinearSolver;

namespace Silkwright.Scheduling.Shelf;

/// <summary>The strong form of the choice, handed to the library's mixed-integer solver. docs/engines/shelf.md, equations 1 to 6.</summary>
internal sealed class ShelfModel : IDisposable
{
    /// <summary>SCIP: it writes nothing of its own on the output, and one thread makes it repeat itself.</summary>
    public const string SolverName = "SCIP";

    /// <summary>Proven means equal to 9 digits.</summary>
    private const double RelativeGap = 1e-9;

    private readonly ShelfProblem problem;
    private readonly ShelfRules rules;
    private readonly Solver solver = Solver.CreateSolver(SolverName);
    private readonly Variable?[] keep;
    private readonly List<Arc> arcs = [];

    /// <param name="problem">What to serve.</param>
    /// <param name="rules">Which sets are asked for.</param>
    /// <param name="fixing">What is known already.</param>
    public ShelfModel(ShelfProblem problem, ShelfRules rules, ShelfFixing fixing)
    {
        (this.problem, this.rules) = (problem, rules);
        solver.SuppressOutput();
        keep = new Variable?[problem.Choices];
        for (var i = 0; i < keep.Length; i++)
        {
            if (fixing.States[i] != Fixed.Dropped)
                keep[i] = solver.MakeIntVar(fixing.States[i] == Fixed.Kept ? 1 : 0, 1, "");
        }

        for (var j = 0; j < problem.Points; j++)
            Serve(j, fixing);
        Count();
        if (problem.HasSizes)
            OneSize();
        if (rules.Not is { } not)
            Exclude(not);
        if (problem.HasMinimums)
            Minimums();
        Objective();
    }

    /// <summary>Pairs of point and emulsion that are left open.</summary>
    public int Services => arcs.Count;

    /// <summary>The best shelf, with the bound the solver has proven; none where no set serves all, or all that do cost the limit or more.</summary>
    /// <param name="nodes">Most nodes of the search.</param>
    /// <param name="cancel">Stops the solver.</param>
    public (bool[] Keep, int[] Served)? Solve(long nodes, out double bound, CancellationToken cancel)
    {
        using var parameters = new MPSolverParameters();
        parameters.SetDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, RelativeGap);
        solver.SetSolverSpecificParametersAsString($"limits/nodes = {nodes}\nnumerics/feastol = 1e-9\n");
        Solver.ResultStatus status;
        using (cancel.Register(() => solver.InterruptSolve()))
            status = solver.Solve(parameters);
        cancel.ThrowIfCancellationRequested();
        bound = status == Solver.ResultStatus.INFEASIBLE ? double.PositiveInfinity : problem.Constant + solver.Objective().BestBound();
        if (status is not (Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE))
            return null;
        var kept = keep.Select(variable => variable is not null && variable.SolutionValue() > 0.5).ToArray();
        return (kept, problem.HasMinimums ? Served() : problem.Cheapest(kept));
    }

    public void Dispose() => solver.Dispose();

    /// <summary>Equations 2 and 3: a point is served once, and by an emulsion that is kept.</summary>
    private void Serve(int j, ShelfFixing fixing)
    {
        var once = solver.MakeConstraint(1, 1);
        for (var i = 0; i < keep.Length; i++)
        {
            if (keep[i] is not { } kept || !double.IsFinite(problem.Costs[i][j]) || !fixing.MayServe(i, problem, j))
                continue;
            // Without minimums the cheapest kept emulsion serves, so that whole emulsions make whole services.
            var serve = problem.HasMinimums ? solver.MakeIntVar(0, 1, "") : solver.MakeNumVar(0, 1, "");
            once.SetCoefficient(serve, 1);
            arcs.Add(new Arc(i, j, serve));
            if (fixing.States[i] == Fixed.Kept)
                continue;
            var needs = solver.MakeConstraint(double.NegativeInfinity, 0);
            needs.SetCoefficient(serve, 1);
            needs.SetCoefficient(kept, -1);
        }
    }

    /// <summary>Equation 4: how many may be kept.</summary>
    private void Count()
    {
        if (rules.Least <= 0 && rules.Most >= keep.Length)
            return;
        var count = solver.MakeConstraint(rules.Least, rules.Most);
        foreach (var kept in keep.OfType<Variable>())
            count.SetCoefficient(kept, 1);
    }

    /// <summary>Equation 4: at most one size of an emulsion.</summary>
    private void OneSize()
    {
        for (var e = 0; e < problem.Emulsions; e++)
        {
            var one = solver.MakeConstraint(0, 1);
            for (var i = 0; i < keep.Length; i++)
            {
                if (problem.EmulsionOf[i] == e && keep[i] is { } kept)
                    one.SetCoefficient(kept, 1);
            }
        }
    }

    /// <summary>Equation 5: at least one emulsion differs from a set.</summary>
    private void Exclude(bool[] not)
    {
        // A set that is fixed to differ already gives a constraint that always holds.
        var differs = solver.MakeConstraint(1 - not.Count(kept => kept), double.PositiveInfinity);
        for (var i = 0; i < keep.Length; i++)
        {
            if (keep[i] is { } kept)
                differs.SetCoefficient(kept, not[problem.EmulsionOf[i]] ? -1 : 1);
        }
    }

    /// <summary>Equation 6: what is kept is used enough, in every month that may come.</summary>
    private void Minimums()
    {
        var used = new Dictionary<(int Emulsion, int Scenario), Constraint>();
        for (var i = 0; i < keep.Length; i++)
        {
            if (keep[i] is not { } kept || problem.Minimums[i] <= 0)
                continue;
            for (var s = 0; s < problem.Shares.Length; s++)
            {
                var enough = used[(i, s)] = solver.MakeConstraint(0, double.PositiveInfinity);
                enough.SetCoefficient(kept, -problem.Minimums[i]);
            }
        }

        foreach (var arc in arcs)
        {
            if (used.TryGetValue((arc.Emulsion, problem.ScenarioOf[arc.Point]), out var enough))
                enough.SetCoefficient(arc.Serves, problem.Loads[arc.Point]);
        }
    }

    /// <summary>Equation 1.</summary>
    private void Objective()
    {
        var objective = solver.Objective();
        objective.SetMinimization();
        for (var i = 0; i < keep.Length; i++)
        {
            if (keep[i] is { } kept)
                objective.SetCoefficient(kept, problem.FixedCosts[i]);
        }

        foreach (var arc in arcs)
            objective.SetCoefficient(arc.Serves, problem.Costs[arc.Emulsion][arc.Point]);
    }

    private int[] Served()
    {
        var served = new int[problem.Points];
        Array.Fill(served, -1);
        foreach (var arc in arcs)
        {
            if (arc.Serves.SolutionValue() > 0.5)
                served[arc.Point] = arc.Emulsion;
        }

        return served;
    }

    private readonly record struct Arc(int Emulsion, int Point, Variable Serves);
}
