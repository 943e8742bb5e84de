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

    /// <summary>500 seeded cases with sizes beside, against every set, every size of each and every placement.</summary>
    [Fact]
    public void Small_cases_with_sizes_equal_brute_force() => RandomCases.Sized.Sample(HoldAgainstBruteForce, seed: "0N0XIzNsQ0O2", iter: 500, threads: 2);

    [Fact]
    public void The_next_best_size_is_priced_for_the_same_jobs() => RandomCases.Sized.Sample(
        shelf =>
        {
            shelf = shelf with { Scenarios = [], Most = null };
            if (BruteForce.Sets(shelf).Count == 0)
                return;
            var answer = ShelfChoice.Of(shelf, TimeProvider.System);
            foreach (var use in answer.Uses)
            {
                var emulsion = shelf.Emulsions.Single(e => e.Id == use.Emulsion);
                Assert.Equal(emulsion.Containers.Count > 0, use.Size is not null);
                if (use.Size is not { } kept)
                    continue;
                var grams = shelf.Jobs.Where(job => answer.Assignments[job.Id] == use.Emulsion)
                    .Sum(job => job.ScreensPerMonth * (job.GramsPerScreen.TryGetValue(use.Emulsion, out var own) ? own : emulsion.GramsPerScreen));
                var costs = emulsion.Containers.ToDictionary(size => size.Grams, size => size.FixedCostPerMonth + (grams * size.Price / size.Grams));
                var others = costs.Where(size => size.Key != kept.Grams).Select(size => size.Value - costs[kept.Grams]).ToList();
                Assert.Equal(others.Count > 0, kept.NextExtra is not null);
                if (kept.NextExtra is { } extra)
                    Assert.Equal(others.Min(), extra, Tolerance);
            }
        },
        seed: "0N0XIzNsQ0O2", iter: 200, threads: 2);

    [Fact]
    public void Equal_jobs_are_one_and_cost_what_they_would_apart()
    {
        var costs = new Dictionary<string, double> { ["A"] = 2, ["B"] = 3 };
        var shelf = new ShelfCase([new("A", 10), new("B", 10)], [.. Enumerable.Range(0, 1000).Select(j => new ShelfJob($"job {j}", 1, costs))]);
        Assert.Equal(1, ShelfProblem.Of(shelf).Points);
        var answer = ShelfChoice.Of(shelf, TimeProvider.System, cancel: TestContext.Current.CancellationToken);
        Assert.Equal(10 + (1000 * 2), answer.MonthlyCost, Tolerance);
        Assert.Equal(1000, answer.Assignments.Count);
    }

    [Fact]
    public void Jobs_bound_to_different_emulsions_are_not_one()
    {
        var costs = new Dictionary<string, double> { ["A"] = 2, ["B"] = 3 };
        var shelf = new ShelfCase([new("A", 10), new("B", 10)], [new("tees", 1, costs) { MustStayOn = "A" }, new("flags", 1, costs) { MustStayOn = "B" }]);
        Assert.Equal(10 + 10 + 2 + 3, ShelfChoice.Of(shelf, TimeProvider.System, cancel: TestContext.Current.CancellationToken).MonthlyCost, Tolerance);
    }

    [Fact]
    public void Asked_again_the_answer_is_the_same_to_the_last_digit() => RandomCases.Small.Sample(
        shelf =>
        {
            if (BruteForce.Sets(shelf).Keys.Any(set => BitOperations.PopCount((uint)set) <= (shelf.Most ?? int.MaxValue)))
                Assert.Equal(Said(shelf), Said(shelf));
        },
        seed: "0N0XIzNsQ0O2", iter: 20, threads: 1);

    [Fact]
    public void Progress_grows_from_nothing_to_all()
    {
        var told = new List<double>();
        var shelf = new ShelfCase([new("A", 10), new("B", 10)], [new("tees", 1, new Dictionary<string, double> { ["A"] = 2, ["B"] = 3 })]);
        _ = ShelfChoice.Of(shelf, TimeProvider.System, new Told(told), TestContext.Current.CancellationToken);
        Assert.Equal((0, 1), (told[0], told[^1]));
        Assert.Equal(told.Order(), told);
    }

    private static string Said(ShelfCase shelf) => ShelfDocument.Of(ShelfChoice.Of(shelf, TimeProvider.System) with { Seconds = 0 }).ToJsonString();

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
        Assert.Equal(BruteForce.Cost(shelf, kept, SizesOf(shelf, answer)) ?? double.NaN, answer.MonthlyCost, Tolerance);
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

    private static int[] SizesOf(ShelfCase shelf, ShelfAnswer answer) => [.. shelf.Emulsions.Select(emulsion =>
        Math.Max(0, emulsion.Containers.ToList().FindIndex(size => size.Grams == answer.Uses.SingleOrDefault(use => use.Emulsion == emulsion.Id)?.Size?.Grams)))];

    private sealed class Told(List<double> told) : IProgress<double>
    {
        public void Report(double value) => told.Add(value);
    }
}
