using CsCheck;
using Silkwright.Choosing;
using Silkwright.Estimates;

namespace Silkwright.Tests.Choosing;

/// <summary>Choices that cost nothing but one amount, so that every figure can be worked out by hand from its triangular law.</summary>
public class ComparingTests
{
    private const int Seed = 7;

    private static Estimate Sure(double value) => Estimate.Exact(value, Ground.MeasuredHere);

    private static Contender Costing(string id, Estimate amount) => new(id, CostModel.Of(new CostCase
    {
        Screens = 1,
        GramsPerScreen = Sure(0),
        PricePerKg = Sure(0),
        Work = new ScreenWork(Sure(0), Sure(0), Sure(0), Sure(0), Sure(0), Sure(0)),
        DryingPlacePerScreen = Sure(0),
        LabourPerHour = Sure(0),
        WastePercent = Sure(0),
        ExpectedFailures = Sure(0),
        RemakeChance = Sure(0),
        StopForRemake = Sure(0),
        StopForSpare = Sure(0),
        FinishPerScreen = Sure(0),
        ReclaimPerScreen = amount,
    }));

    private static readonly Contender Steady = Costing("steady", Sure(10));

    /// <summary>Triangular from 5 over 9 to 20: mean 34/3, P(below 10) = 1 − 10²/(15 · 11), by the law's textbook formulas.</summary>
    private static readonly Contender Chancy = Costing("chancy", new Estimate(9, 5, 20, Ground.CommonPractice));

    private static readonly Comparison Both = Comparing.Of([Chancy, Steady], Seed);

    [Fact]
    public void The_mean_of_a_lopsided_cost_ranks_it_and_not_its_likeliest_value()
    {
        Assert.Equal(34.0 / 3, Chancy.Cost.Total.Value, 9);
        Assert.Equal("steady", Both.Expected);
    }

    [Fact]
    public void The_chance_to_be_cheapest_is_the_laws()
    {
        var chancyBelow = 100 * (1 - (100.0 / 165));
        Assert.Equal(100 - chancyBelow, Both.Standings[0].ChanceBestPercent, 2.0);
        Assert.Equal(chancyBelow, Both.Standings[1].ChanceBestPercent, 2.0);
        Assert.True(Both.IsClose);
    }

    /// <summary>E[max(0, 10 − X)] by numerical integration of the law's density, written out here.</summary>
    [Fact]
    public void Mean_regret_is_what_the_other_would_have_saved()
    {
        const int steps = 100_000;
        var saved = 0.0;
        for (var i = 0; i < steps; i++)
        {
            var x = 5 + ((i + 0.5) * 5 / steps);
            var density = x < 9 ? 2 * (x - 5) / (15 * 4) : 2 * (20 - x) / (15.0 * 11);
            saved += (10 - x) * density * 5 / steps;
        }

        Assert.Equal(saved, Both.Standings[0].MeanRegret, 0.05);
    }

    /// <summary>Savage's rule: the steady one can lose 5 at most, the chancy one 10.</summary>
    [Fact]
    public void The_robust_choice_loses_least_at_worst()
    {
        Assert.Equal("steady", Both.Robust);
        Assert.InRange(Both.Standings[0].WorstRegret, 4, 5);
        Assert.InRange(Both.Standings[1].WorstRegret, 8.5, 10);
    }

    [Fact]
    public void The_expected_and_the_robust_choice_can_differ()
    {
        var gamble = Costing("gamble", new Estimate(6, 5, 18, Ground.CommonPractice));
        var comparison = Comparing.Of([gamble, Costing("steady", Sure(10))], Seed);
        Assert.Equal("gamble", comparison.Expected);
        Assert.Equal("steady", comparison.Robust);
    }

    /// <summary>Only one amount is unknown, so knowing it leaves nothing to lose (but the slices' coarseness).</summary>
    [Fact]
    public void The_only_unknown_settles_the_choice()
    {
        var settles = Both.Settles!;
        Assert.Equal(CostInput.ReclaimPerScreen, settles.Input);
        Assert.Equal("chancy", settles.Of);
        Assert.True(settles.RegretKnown < 0.15 * settles.RegretNow, $"{settles.RegretKnown} of {settles.RegretNow}");
    }

    [Fact]
    public void A_clear_choice_asks_for_no_measurement()
    {
        var comparison = Comparing.Of([Steady, Costing("far", new Estimate(50, 40, 60, Ground.CommonPractice))], Seed);
        Assert.Null(comparison.Settles);
        Assert.False(comparison.IsClose);
    }

    [Fact]
    public void No_regret_is_negative_and_one_choice_is_cheapest_in_every_draw() =>
        Gen.Double[1, 50].Select(Gen.Double[1, 3], (value, factor) => Estimate.WithinFactor(value, factor, Ground.CommonPractice))
            .Array[1, 6]
            .Sample(
                amounts =>
                {
                    var comparison = Comparing.Of([.. amounts.Select((a, i) => Costing($"e{i}", a))], Seed);
                    Assert.All(comparison.Standings, standing => Assert.True(standing.MeanRegret >= 0 && standing.WorstRegret >= standing.MeanRegret - 1e-9));
                    Assert.InRange(comparison.Standings.Sum(standing => standing.ChanceBestPercent), 99.9, 100 * amounts.Length);
                },
                iter: 40);

    [Fact]
    public void The_same_seed_gives_the_same_answer() =>
        Assert.Equal(
            Both.Standings.Select(standing => standing.MeanRegret),
            Comparing.Of([Chancy, Steady], Seed).Standings.Select(standing => standing.MeanRegret));
}
