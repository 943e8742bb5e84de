using Silkwright.Estimates;

namespace Silkwright.Tests.Estimates;

public class EstimateTests
{
    [Theory]
    [InlineData(1, 2, 3)]
    [InlineData(4, 2, 3)]
    [InlineData(double.NaN, 0, 1)]
    [InlineData(0, double.NegativeInfinity, 1)]
    [InlineData(0, 0, double.PositiveInfinity)]
    public void An_interval_that_does_not_hold_its_value_is_refused(double value, double low, double high) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new Estimate(value, low, high, Ground.Model));

    [Fact]
    public void Within_a_share_is_even_either_way()
    {
        var estimate = Estimate.Within(-50, 0.1, Ground.Datasheet);
        Assert.Equal((-55.0, -45.0), (estimate.Low, estimate.High));
    }

    [Fact]
    public void Within_a_factor_is_even_in_ratio()
    {
        var estimate = Estimate.WithinFactor(10, 2, Ground.CommonPractice);
        Assert.Equal((5.0, 20.0), (estimate.Low, estimate.High));
    }

    [Fact]
    public void An_exact_number_has_no_width_and_holds_every_case()
    {
        var estimate = Estimate.Exact(3, Ground.MeasuredHere);
        Assert.Equal((3.0, 3.0, 100.0), (estimate.Low, estimate.High, estimate.CoverPercent));
    }

    [Fact]
    public void A_negative_factor_swaps_the_ends()
    {
        var estimate = new Estimate(2, 1, 4, Ground.Model).Times(-3);
        Assert.Equal((-12.0, -6.0, -3.0), (estimate.Low, estimate.Value, estimate.High));
    }

    [Fact]
    public void A_map_keeps_ground_and_cover()
    {
        var estimate = new Estimate(4, 1, 9, Ground.MeasuredElsewhere, 95).Map(Math.Sqrt);
        Assert.Equal((1.0, 2.0, 3.0), (estimate.Low, estimate.Value, estimate.High));
        Assert.Equal((Ground.MeasuredElsewhere, 95.0), (estimate.Ground, estimate.CoverPercent));
    }
}
