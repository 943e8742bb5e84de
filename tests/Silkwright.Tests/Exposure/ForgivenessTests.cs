using Silkwright.Estimates;
using Silkwright.Exposure;

namespace Silkwright.Tests.Exposure;

public class ForgivenessTests
{
    private static ExposureWindow Window(double least, double aim, double most) => new()
    {
        Counts = ExposureCount.Seconds,
        Least = Estimate.Exact(least, Ground.Model),
        Most = Estimate.Exact(most, Ground.Model),
        Aim = Estimate.Exact(aim, Ground.Model),
        OpenChancePercent = most > least ? 100 : 0,
        LatitudeStops = Math.Log2(most / least),
        LatitudeSteps = 0,
        FinestHeldUm = Estimate.Exact(100, Ground.Model),
        RequiredFilmDensityUv = 3,
        Drivers = [],
    };

    /// <summary>The trade feels that a fast emulsion forgives less. Common practice, no source.</summary>
    [Fact]
    public void The_same_ratio_forgives_less_where_the_time_is_short()
    {
        var slow = Forgiveness.Of(Window(100, 130, 169));
        var fast = Forgiveness.Of(Window(4, 5.2, 6.76));
        Assert.True(fast.RightPercent < slow.RightPercent - 5, $"{fast.RightPercent} against {slow.RightPercent}");
        Assert.Equal(30, slow.SecondsEitherSide!.Value, 9);
    }

    /// <summary>One standard deviation of dose each side and a long time: 68.27 of 100 by the normal law's table.</summary>
    [Fact]
    public void One_scatter_each_side_of_a_long_time_is_right_68_times_in_100()
    {
        var step = Math.Exp(Forgiveness.DailyDoseScatter);
        Assert.Equal(68.27, Forgiveness.Of(Window(1e6 / step, 1e6, 1e6 * step)).RightPercent, 2);
    }

    [Fact]
    public void Without_an_aim_nothing_is_right() =>
        Assert.Equal(0, Forgiveness.Of(Window(100, 130, 169) with { Aim = null }).RightPercent);
}
