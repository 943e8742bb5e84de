using Google.OrTools.LinearSolver;

namespace Silkwright.Scheduling.Shelf;

/// <summary>Whether any set that the rules allow serves every point, cost aside: a covering problem of one variable an emulsion.</summary>
internal static class ShelfCover
{
    /// <returns>A set that serves; none where there is none.</returns>
    public static bool[]? Find(ShelfProblem problem, ShelfRules rules, CancellationToken cancel)
    {
        using var solver = Solver.CreateSolver(ShelfModel.SolverName);
        solver.SuppressOutput();
        var keep = Enumerable.Range(0, problem.Choices).Select(_ => solver.MakeIntVar(0, 1, "")).ToArray();
        foreach (var serving in Rows(problem))
        {
            var served = solver.MakeConstraint(1, double.PositiveInfinity);
            foreach (var i in serving)
                served.SetCoefficient(keep[i], 1);
        }

        var count = solver.MakeConstraint(rules.Least, rules.Most);
        foreach (var kept in keep)
            count.SetCoefficient(kept, 1);
        foreach (var sizes in Enumerable.Range(0, keep.Length).GroupBy(i => problem.EmulsionOf[i]))
        {
            var one = solver.MakeConstraint(0, 1);
            foreach (var i in sizes)
                one.SetCoefficient(keep[i], 1);
        }

        if (rules.Not is { } not)
        {
            var differs = solver.MakeConstraint(1 - not.Count(kept => kept), double.PositiveInfinity);
            for (var i = 0; i < keep.Length; i++)
                differs.SetCoefficient(keep[i], not[problem.EmulsionOf[i]] ? -1 : 1);
        }

        Solver.ResultStatus status;
        using (cancel.Register(() => solver.InterruptSolve()))
            status = solver.Solve();
        cancel.ThrowIfCancellationRequested();
        return status is Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE ? [.. keep.Select(kept => kept.SolutionValue() > 0.5)] : null;
    }

    /// <summary>Who serves a point, each different list once.</summary>
    private static IEnumerable<int[]> Rows(ShelfProblem problem) => Enumerable.Range(0, problem.Points)
        .Select(j => Enumerable.Range(0, problem.Choices).Where(i => double.IsFinite(problem.Costs[i][j])).ToArray())
        .DistinctBy(serving => string.Join(' ', serving));
}
