using Silkwright.Statistics;

namespace Silkwright.Tests.Statistics;

public class WeibullTests
{
    /// <summary>Shape 1 is exponential (mean and deviation equal the scale); shape 2 is Rayleigh (mean scale·√π/2).</summary>
    [Fact]
    public void Known_shapes_have_their_known_means()
    {
        Assert.Equal(100, new Weibull(1, 100).Mean, 1e-6);
        Assert.Equal(10_000, new Weibull(1, 100).Variance, 1e-3);
        Assert.Equal(88.6226925, new Weibull(2, 100).Mean, 1e-6);
        Assert.Equal(2146.0184, new Weibull(2, 100).Variance, 1e-3); // scale²·(1 − π/4)
    }

    [Fact]
    public void By_its_scale_63_percent_have_failed() => Assert.Equal(0.3678794412, new Weibull(2.3, 500).Survival(500), 1e-9);

    [Fact]
    public void A_mixture_fails_half_by_its_median()
    {
        var mixture = new WeibullMixture(0.9, Weibull.WithMedian(1.7, 10_000), Weibull.WithMedian(1.7, 400));
        Assert.Equal(0.5, mixture.Survival(mixture.Median), 1e-9);
    }

    /// <summary>Mean and variance of a mixture by the law of total variance, worked by hand for two exponentials of 100 and 300.</summary>
    [Fact]
    public void A_mixture_has_the_total_variance()
    {
        var mixture = new WeibullMixture(0.5, new Weibull(1, 100), new Weibull(1, 300));
        Assert.Equal(200, mixture.Mean, 1e-6);
        Assert.Equal(60_000, mixture.Variance, 1e-2); // (100² + 300²)/2 + 100²
    }
}
