using CsCheck;
using Silkwright.Scheduling.Shelf;

namespace Silkwright.Scheduling.Tests.Shelf;

/// <summary>Cases too large for trying every set: branch and bound against the library's solver on the plain strong form, and what is said where work ends early.</summary>
public sealed class ShelfProofTests
{
    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    private static readonly Gen<ShelfProblem> Drawn =
        from fixedCosts in Gen.Double[20, 60].Array[12]
        from costs in Gen.Double[1, 11].Array[12].Array[50]
        from absent in Gen.Int[0, 4].Array[12].Array[50]
        select ShelfProblem.Of(new ShelfCase(
            [.. fixedCosts.Select((cost, i) => new ShelfEmulsion($"E{i}", cost))],
            [.. costs.Select((row, j) => new ShelfJob($"J{j}", 1 + (j % 5), row.Select((cost, i) => (cost, i)).Where(x => absent[j][x.i] > 0 || x.i == 0).ToDictionary(x => $"E{x.i}", x => x.cost)))]));

    [Fact]
    public void Branch_and_bound_agrees_with_the_librarys_solver() => Drawn.Sample(
        problem =>
        {
            Agree(problem, new ShelfRules(0, 12));
            Agree(problem, new ShelfRules(0, 3));
            Agree(problem, new ShelfRules(5, 5));
        },
        seed: "0N0XIzNsQ0O2", iter: 10, threads: 1);

    [Fact]
    public void Where_the_work_ends_early_the_bound_is_still_below_every_shelf()
    {
        var left = 0;
        Drawn.Sample(problem =>
        {
            var rules = new ShelfRules(0, 12);
            var early = Best(problem, rules, 1);
            var late = Best(problem, rules, long.MaxValue);
            left += early.Bound < early.Cost ? 1 : 0;
            Assert.InRange(early.Bound, 0, late.Cost);
            Assert.InRange(late.Cost, 0, early.Cost);
            Assert.Equal(late.Cost, late.Bound);
        }, seed: "0N0XIzNsQ0O2", iter: 10, threads: 1);
        Assert.InRange(left, 1, 10); // or no case tries what this is here for
    }

    /// <summary>Weak duality: at any prices at all, the bound is below what any set costs.</summary>
    [Fact]
    public void Any_prices_bound_the_cost_of_any_set_from_below() =>
        Gen.Select(Drawn, Gen.Double[0, 60].Array[50], Gen.Bool.Array[12]).Sample(
            (problem, prices, set) =>
            {
                var bound = new LagrangianBound(problem, new ShelfRules(0, 12));
                bound.Begin(new Fixed[12], prices, new double[12]);
                Assert.InRange(bound.Evaluate(), double.NegativeInfinity, problem.CostOf(set, problem.Cheapest(set)) + 1e-9);
            },
            seed: "0N0XIzNsQ0O2", iter: 200);

    [Fact]
    public void Stopped_work_ends_at_once()
    {
        var shelf = new ShelfCase([new("A", 1), new("B", 1)], [new("job", 1, new Dictionary<string, double> { ["A"] = 1, ["B"] = 2 })]);
        Assert.ThrowsAny<OperationCanceledException>(() => ShelfChoice.Of(shelf, TimeProvider.System, null, new CancellationToken(canceled: true)));
    }

    private static void Agree(ShelfProblem problem, ShelfRules rules)
    {
        using var model = new ShelfModel(problem, rules, ShelfFixing.Nothing(problem));
        var plain = model.Solve(long.MaxValue, out _, Cancel);
        if (plain is not var (keep, served))
        {
            Assert.Null(new ShelfSearch(problem, Cancel).Best(rules, new bool[12], long.MaxValue, _ => { }));
            return;
        }

        var own = Best(problem, rules, long.MaxValue);
        Assert.Equal(problem.CostOf(keep, served), own.Cost, 1e-6);
        Assert.True(rules.Allow(problem, own.Keep));
    }

    private static ShelfSolution Best(ShelfProblem problem, ShelfRules rules, long mostLooks) =>
        new ShelfSearch(problem, Cancel).Best(rules, new bool[problem.Choices], mostLooks, _ => { })!;
}
