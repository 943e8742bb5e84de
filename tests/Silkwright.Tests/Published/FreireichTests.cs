using Silkwright.Statistics;

namespace Silkwright.Tests.Published;

/// <summary>
/// Weibull fit to the remission times of Freireich and others, Blood 21 (1963) 699, by R's survival 3.5-3: shape, scale, and
/// the median that belongs to them.
/// </summary>
public class FreireichTests
{
    [Theory]
    [InlineData(1.353734524, 33.76515097, 25.75650302, 6.405064644)]
    [InlineData(1.370499859, 9.482141254, 7.257098237, 1.835662361)]
    public void Scale_median_and_tenth_belong_together(double shape, double scale, double median, double tenth)
    {
        Assert.Equal(1, Weibull.WithMedian(shape, median).Scale / scale, 1e-6);
        Assert.Equal(0.9, new Weibull(shape, scale).Survival(tenth), 1e-6);
    }
}
