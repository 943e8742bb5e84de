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

    /// <summary>A normal scatter of 12 % covers one standard deviation each side of the aim with a latitude of 24 % in all.</summary>
    [Fact]
    public void A_window_of_one_scatter_each_side_cures_84_of_100()
    {
        var stops = 2 * Forgiveness.DailyDoseScatter / Math.Log(2);
        Assert.Equal(0.8413, CureChance.WellCured(stops), 4);
        Assert.Equal(0.5, CureChance.WellCured(0), 9);
    }
}
