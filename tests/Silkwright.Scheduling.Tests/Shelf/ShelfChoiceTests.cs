using System.Numerics;
using CsCheck;
using Silkwright.Estimates;
using Silkwright.Scheduling.Shelf;

namespace Silkwright.Scheduling.Tests.Shelf;

public sealed class ShelfChoiceTests
{
    private const double Tolerance = 1e-6;

    /// <summary>500 seeded cases with caps, minimum use, switching, jobs that stay and scenarios, against every set and every placement.</summary>
    [Fact]
    public void Small_cases_equal_brute_force() => RandomCases.Small.Sample(HoldAgainstBruteForce, seed: "0N0XIzNsQ0O2", iter: 500, threads: 2);

    private static void HoldAgainstBruteForce(ShelfCase shelf)
    {
        var sets = BruteForce.Sets(shelf);
        var allowed = sets.Where(set => BitOperations.PopCount((uint)set.Key) <= (shelf.Most ?? int.MaxValue)).ToDictionary();
        if (allowed.Count == 0)
        {
            var fault = Assert.Throws<InputProblemException>(() => ShelfChoice.Of(shelf, TimeProvider.System));
            Assert.All(fault.Problems, problem => Assert.NotEmpty(problem.Remedy));
            return;
        }

        var answer = ShelfChoice.Of(shelf, TimeProvider.System);
        var kept = BruteForce.SetOf(shelf, answer.Keep);
        var least = allowed.Values.Min();
        Assert.Equal(least, answer.MonthlyCost, Tolerance);
        Assert.Equal(sets[kept], answer.MonthlyCost, Tolerance);
        Assert.InRange(answer.Bound, least - Tolerance, least + Tolerance);
        Assert.Equal(answer.MonthlyCost, answer.FixedCostPerMonth + answer.RunningCostPerMonth + answer.SwitchingCostPerMonth, Tolerance);
        var count = answer.Keep.Count;
        Hold(allowed.Where(set => set.Key != kept), answer.SecondBest);
        Hold(sets.Where(set => BitOperations.PopCount((uint)set.Key) == count + 1), answer.OneMore);
        Hold(sets.Where(set => BitOperations.PopCount((uint)set.Key) == count - 1), answer.OneFewer);
        Assert.All(shelf.Jobs, job => Assert.Contains(answer.Assignments[job.Id], job.MustStayOn is { } only ? [only] : job.Costs.Keys.Intersect(answer.Keep)));

        void Hold(IEnumerable<KeyValuePair<int, double>> others, OtherShelf? other)
        {
            var costs = others.ToDictionary();
            Assert.Equal(costs.Count > 0, other is not null);
            if (other is null)
                return;
            Assert.Equal(costs.Values.Min(), other.MonthlyCost, Tolerance);
            Assert.Equal(costs[BruteForce.SetOf(shelf, other.Keep)], other.MonthlyCost, Tolerance);
            Assert.Equal(other.MonthlyCost - answer.MonthlyCost, other.Extra, Tolerance);
            Assert.InRange(other.Bound, other.MonthlyCost - Tolerance, other.MonthlyCost + Tolerance);
        }
    }
}
