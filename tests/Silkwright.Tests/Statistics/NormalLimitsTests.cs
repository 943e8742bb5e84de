using CsCheck;
using Silkwright.Statistics;

namespace Silkwright.Tests.Statistics;

public class NormalLimitsTests
{
    private static readonly Gen<NormalLimits> Any = Gen.Select(Gen.Double[0.05, 2], Gen.Double[0.05, 1], Gen.Double[0.05, 1], Gen.Double[-0.95, 0.95], (apart, low, high, correlation) =>
        new NormalLimits(0, apart, low * low, high * high, correlation * low * high));

    /// <summary>Sheppard (1899): both of two standard normals of correlation r lie below their means in 1/4 + asin(r)/(2π) of cases; here the lower does and the upper does not.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(0.5)]
    [InlineData(-0.5)]
    [InlineData(0.99)]
    [InlineData(-0.9)]
    public void Limits_about_one_mean_keep_to_sheppards_formula(double correlation) =>
        Assert.Equal(0.25 - (Math.Asin(correlation) / (2 * Math.PI)), new NormalLimits(0, 0, 1, 1, correlation).ChanceBetween(0), 1e-9);

    /// <summary>Two limits apart from each other: a product of two of the normal law's tabled values, Φ(1) = 0.841345 and Φ(2) = 0.977250.</summary>
    [Fact]
    public void Limits_that_vary_apart_multiply() => Assert.Equal(0.841345 * 0.977250, new NormalLimits(0, 3, 1, 1, 0).ChanceBetween(1), 1e-5);

    [Fact]
    public void Limits_that_move_as_one_are_a_window_that_moves()
    {
        var limits = new NormalLimits(-1, 1, 1, 1, 1);
        Assert.Equal(0, limits.Best(-1, 1), 1e-9);
        Assert.Equal(0.682689, limits.ChanceBetween(0), 1e-6);
    }

    /// <summary>Against pairs drawn by a method of its own: within four standard errors.</summary>
    [Fact]
    public void The_chance_is_that_of_drawn_pairs() => Any.Select(Gen.Double[-0.5, 2], Gen.Int[1, 1_000_000]).Sample((limits, value, seed) =>
    {
        const int draws = 20_000;
        var random = new Random(seed);
        var between = 0;
        for (var i = 0; i < draws; i++)
        {
            var (radius, angle) = (Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())), 2 * Math.PI * random.NextDouble());
            var low = Math.Sqrt(limits.LowVariance) * radius * Math.Cos(angle);
            var given = limits.Covariance / limits.LowVariance;
            var high = limits.High + (given * low) + (Math.Sqrt(limits.HighVariance - (given * limits.Covariance)) * radius * Math.Sin(angle));
            between += low < value && value < high ? 1 : 0;
        }

        var chance = limits.ChanceBetween(value);
        Assert.Equal(chance, between / (double)draws, (4 * Math.Sqrt(chance * (1 - chance) / draws)) + 2e-4);
    }, iter: 100);

    [Fact]
    public void Nowhere_between_is_better_than_the_best() => Any.Select(Gen.Double[0, 1]).Sample((limits, share) =>
        limits.ChanceBetween(limits.Best(0, limits.High)) >= limits.ChanceBetween(share * limits.High) - 1e-9);

    /// <summary>Limits that vary apart and little beside what lies between: the best keeps away from the one that is known less.</summary>
    [Fact]
    public void The_best_lies_nearer_to_the_limit_that_is_known_better() => Gen.Select(Gen.Double[0.02, 0.2], Gen.Double[0.02, 0.2]).Sample((low, high) =>
        (new NormalLimits(0, 1, low * low, high * high, 0).Best(0, 1) - 0.5) * (low - high) >= -1e-12);
}
