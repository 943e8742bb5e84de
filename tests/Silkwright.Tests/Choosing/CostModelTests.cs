using MathNet.Numerics.Distributions;
using Silkwright.Choosing;
using Silkwright.Estimates;
using Silkwright.Exposure;

namespace Silkwright.Tests.Choosing;

public class CostModelTests
{
    private static Estimate Sure(double value) => Estimate.Exact(value, Ground.MeasuredHere);

    private static CostCase Case(int screens = 1, double failures = 0, double waste = 0, double remake = 0) => new()
    {
        Screens = screens,
        GramsPerScreen = Sure(50),
        PricePerKg = Sure(20),
        Work = new ScreenWork(Sure(2), Sure(3), Sure(1), Sure(14), Sure(0), Sure(10)),
        DryingPlacePerScreen = Sure(0),
        ReclaimPerScreen = Sure(0),
        LabourPerHour = Sure(24),
        WastePercent = Sure(waste),
        ExpectedFailures = Sure(failures),
        RemakeChance = Sure(remake),
        StopForRemake = Sure(100),
        StopForSpare = Sure(10),
        FinishPerScreen = Sure(0),
    };

    /// <summary>By hand: 50 g at 20 a kilogram is 1; 30 minutes at 24 an hour is 12.</summary>
    [Fact]
    public void A_screen_that_never_fails_costs_its_emulsion_and_its_hands()
    {
        var cost = CostModel.Of(Case());
        Assert.Equal(1, cost.EmulsionOnScreen.Value, 9);
        Assert.Equal(12, cost.Labour.Value, 9);
        Assert.Equal(13, cost.Total.Value, 9);
    }

    /// <summary>By hand: with three quarters thrown away, each gram on the screen cost three more.</summary>
    [Fact]
    public void What_is_thrown_away_is_paid_by_what_is_used() =>
        Assert.Equal(3, CostModel.Of(Case(waste: 75)).Waste.Value, 9);

    /// <summary>By hand: each failure costs a new screen of 13 and a stop of 100.</summary>
    [Fact]
    public void A_failure_without_a_spare_costs_a_screen_and_a_stopped_press() =>
        Assert.Equal(0.5 * 113, CostModel.Of(Case(failures: 0.5)).Remakes.Value, 9);

    /// <summary>Failures beyond the spares, against the sum over a Poisson count from Math.NET.</summary>
    [Theory]
    [InlineData(0.3, 1)]
    [InlineData(2.5, 1)]
    [InlineData(2.5, 4)]
    public void Spares_turn_long_stops_into_short_ones(double failures, int spares)
    {
        var count = new Poisson(failures);
        var beyond = Enumerable.Range(0, 60).Sum(n => count.Probability(n) * Math.Max(0, n - spares));
        var expected = (beyond * 113) + ((failures - beyond) * 10);
        Assert.Equal(expected, CostModel.Of(Case(screens: 1 + spares, failures: failures)).Remakes.Value, 6);
    }

    [Fact]
    public void A_labour_rate_that_both_share_does_not_blur_their_difference()
    {
        var rate = new Estimate(24, 12, 48, Ground.CommonPractice);
        var cheap = CostModel.Of(Case() with { LabourPerHour = rate });
        var dear = CostModel.Of(Case(waste: 75) with { LabourPerHour = rate });
        var difference = CostModel.Difference(dear, cheap);
        Assert.Equal(3, difference.Value, 9);
        Assert.True(difference.High - difference.Low < 0.1, "the difference is sharper than either cost");
        Assert.True(dear.Total.High - dear.Total.Low > 5);
    }

    /// <summary>By hand: a slow coat takes its place for 2, a quick one for 0.5. Their difference is what the two totals differ by.</summary>
    [Fact]
    public void A_coat_that_dries_longer_is_dearer_by_the_place_it_takes()
    {
        var slow = CostModel.Of(Case() with { DryingPlacePerScreen = Sure(2) });
        var quick = CostModel.Of(Case() with { DryingPlacePerScreen = Sure(0.5) });
        Assert.Equal(1.5, CostModel.Difference(slow, quick).Value, 9);
        Assert.Equal(slow.Total.Value - quick.Total.Value, CostModel.Difference(slow, quick).Value, 9);
    }

    [Fact]
    public void Two_emulsions_of_which_the_same_is_known_may_still_turn_out_unlike()
    {
        var price = new Estimate(20, 10, 30, Ground.CommonPractice);
        var difference = CostModel.Difference(CostModel.Of(Case() with { PricePerKg = price }), CostModel.Of(Case() with { PricePerKg = price }));
        Assert.Equal(0, difference.Value, 9);
        Assert.True(difference.Low < -0.3 && difference.High > 0.3);
        var one = CostModel.Of(Case() with { PricePerKg = price });
        Assert.Equal(0, CostModel.Difference(one, one).High);
    }

    /// <summary>By hand: a fifth of the screens made again cost 2.6; a hundredth that fails on press 1.13.</summary>
    [Fact]
    public void A_screen_made_again_before_it_prints_did_not_fail_in_the_run()
    {
        var sentence = LostBy.Sentence(CostModel.Of(Case(remake: 0.2)), CostModel.Of(Case(failures: 0.01)));
        Assert.Equal("more of its screens must be made again before they print, though it is likelier to finish the run", sentence);
        Assert.Equal("it is likelier to fail before the run is done", LostBy.Sentence(CostModel.Of(Case(failures: 0.01)), CostModel.Of(Case())));
    }

    /// <summary>A normal scatter of 12 % covers one standard deviation each side of the aim with a latitude of 24 % in all.</summary>
    [Fact]
    public void A_window_of_one_scatter_each_side_cures_84_of_100()
    {
        var stops = 2 * Forgiveness.DailyDoseScatter / Math.Log(2);
        Assert.Equal(0.8413, CureChance.WellCured(stops), 4);
        Assert.Equal(0.5, CureChance.WellCured(0), 9);
    }
}
