using Silkwright.Estimates;
using Silkwright.Scheduling.Shelf;

namespace Silkwright.Scheduling.Tests.Shelf;

/// <summary>Intervals of a month's cost and of differences, against laws that can be worked out by hand.</summary>
public sealed class ShelfDoubtTests
{
    private static readonly Estimate Range = new(5, 4, 7, Ground.Datasheet);

    private static ShelfJob Job(params (string Emulsion, Estimate Cost)[] costs) => new("tees", 10, costs.ToDictionary(cost => cost.Emulsion, cost => cost.Cost.Value))
    {
        CostRanges = costs.Where(cost => cost.Cost.High > cost.Cost.Low).ToDictionary(cost => cost.Emulsion, cost => cost.Cost),
    };

    private static ShelfAnswer Answer(ShelfCase shelf) => ShelfChoice.Of(shelf, TimeProvider.System, cancel: TestContext.Current.CancellationToken);

    /// <summary>
    /// The triangular law on 4, 5, 7 has its 5 % point at 4 + sqrt(0.05 x 3 x 1) and its 95 % point at 7 - sqrt(0.05 x 3 x 2) (any handbook of
    /// distributions); ten screens, 20 for keeping. A thousand draws come within 1.5 of that.
    /// </summary>
    [Fact]
    public void A_single_cost_keeps_its_law()
    {
        var doubt = Answer(new ShelfCase([new("A", 20)], [Job(("A", Range))])).Doubt!;
        Assert.Equal(70, doubt.MonthlyCost.Value, 1e-9);
        Assert.Equal(20 + (10 * (4 + Math.Sqrt(0.15))), doubt.MonthlyCost.Low, 1.5);
        Assert.Equal(20 + (10 * (7 - Math.Sqrt(0.3))), doubt.MonthlyCost.High, 1.5);
        Assert.Equal((90, Ground.Model), (doubt.MonthlyCost.CoverPercent, doubt.MonthlyCost.Ground));
    }

    [Fact]
    public void What_two_shelves_share_falls_out_of_their_difference()
    {
        var answer = Answer(new ShelfCase([new("A", 20) { KeptToday = true }, new("B", 9) { KeptToday = true }], [Job(("A", Range), ("B", Estimate.Exact(60, Ground.Model)))]));
        Assert.Equal(["A"], answer.Keep);
        Assert.Equal((9, 9, 9), (answer.Doubt!.SavesPerMonth!.Low, answer.Doubt.SavesPerMonth.Value, answer.Doubt.SavesPerMonth.High));
        Assert.True(answer.Doubt.MonthlyCost.High > answer.Doubt.MonthlyCost.Low);
        Assert.Equal(100, answer.Doubt.ChanceCheapestPercent);
    }

    /// <summary>Of two alike each is the cheaper half of the time; a thousand draws come within 5 points.</summary>
    [Fact]
    public void Of_two_alike_each_is_cheapest_half_of_the_time()
    {
        var answer = Answer(new ShelfCase([new("A", 20), new("B", 20)], [Job(("A", Range), ("B", Range))]));
        Assert.InRange(answer.Doubt!.ChanceCheapestPercent, 45, 55);
        Assert.Equal((0, true), (answer.Doubt.SecondBest!.Value, answer.Doubt.SecondBest.Low < 0));
    }

    [Fact]
    public void Single_figures_have_no_interval_and_say_so()
    {
        var answer = Answer(new ShelfCase([new("A", 20)], [Job(("A", Estimate.Exact(5, Ground.Model)))]));
        Assert.Null(answer.Doubt);
        Assert.Contains(answer.Notes, note => note.Text.Contains("single figure", StringComparison.Ordinal));
    }

    [Fact]
    public void A_case_may_give_costs_with_their_intervals()
    {
        var shelf = ShelfReader.Read(
            """{"currency": "EUR", "emulsions": [{"id": "A", "fixedCostPerMonth": {"value": 20, "low": 15, "high": 30}}], "jobs": [{"id": "tees", "screensPerMonth": 1, "costs": {"A": {"value": 5, "low": 4, "high": 7, "ground": "datasheet"}}}]}""", "case.json");
        Assert.Equal(("EUR", 20, 5), (shelf.Currency, shelf.Emulsions[0].FixedCostPerMonth, shelf.Jobs[0].Costs["A"]));
        Assert.Equal(new Estimate(20, 15, 30, Ground.CommonPractice), shelf.Emulsions[0].FixedCostRange);
        Assert.Equal(Range, shelf.Jobs[0].CostRanges["A"]);
    }

    [Fact]
    public void A_value_outside_its_interval_is_told()
    {
        var fault = Assert.Throws<InputProblemException>(() => ShelfReader.Read(
            """{"emulsions": [{"id": "A", "fixedCostPerMonth": 20}], "jobs": [{"id": "tees", "screensPerMonth": 1, "costs": {"A": {"value": 9, "low": 4, "high": 7}}}]}""", "case.json"));
        Assert.Equal("case.json: jobs[0].costs.A", Assert.Single(fault.Problems).Where);
    }
}
