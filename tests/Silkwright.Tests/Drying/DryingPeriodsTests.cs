using CsCheck;
using Silkwright.Drying;

namespace Silkwright.Tests.Drying;

public class DryingPeriodsTests
{
    private static readonly DryingPeriods Layer = new(SolidKgPerM2: 0.05, RateKgPerM2S: 2e-5, Critical: 0.4, Rest: 0.03);

    /// <summary>A slow obvious version: the two periods stepped through in hundredths of a second (Euler), within 0.1 %.</summary>
    [Theory]
    [InlineData(0.20)]
    [InlineData(0.05)]
    public void Time_to_a_moisture_agrees_with_stepping_through_it(double to)
    {
        const double Step = 0.01;
        double moisture = 1.5, seconds = 0;
        while (moisture > to)
        {
            var share = moisture > 0.4 ? 1 : (moisture - 0.03) / (0.4 - 0.03);
            moisture -= 2e-5 / 0.05 * share * Step;
            seconds += Step;
        }

        Assert.Equal(1, Layer.Seconds(1.5, to) / seconds, 1e-3);
    }

    [Fact]
    public void Moisture_after_the_time_to_a_moisture_is_that_moisture() => Gen.Select(Gen.Double[0.031, 1.4], Gen.Double[0, 500])
        .Sample((to, inside) =>
        {
            var layer = Layer with { InsideSeconds = inside };
            return Math.Abs(layer.MoistureAfter(layer.Seconds(1.5, to), 1.5) - to) < 1e-9;
        });

    [Fact]
    public void A_layer_never_gets_drier_than_rest() => Assert.Equal(double.PositiveInfinity, Layer.Seconds(1.5, 0.03));

    [Fact]
    public void What_is_dry_enough_takes_no_time() => Assert.Equal(0, Layer.Seconds(0.1, 0.2));

    [Fact]
    public void The_way_through_the_layer_slows_only_the_falling_rate()
    {
        var thick = Layer with { InsideSeconds = 600 };
        Assert.Equal(Layer.Seconds(1.5, 0.4), thick.Seconds(1.5, 0.4), 1e-9);
        Assert.True(thick.Seconds(1.5, 0.1) > Layer.Seconds(1.5, 0.1));
    }
}
