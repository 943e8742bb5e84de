using CsCheck;
using MathNet.Numerics.Distributions;
using Silkwright.Statistics;
using Weibull = Silkwright.Statistics.Weibull;

namespace Silkwright.Tests.Statistics;

public class RenewalsTests
{
    private static WeibullMixture One(double shape, double scale)
    {
        var life = new Weibull(shape, scale);
        return new WeibullMixture(1, life, life);
    }

    /// <summary>With shape 1 the life is exponential and the count of renewals is Poisson: textbook identity.</summary>
    [Theory]
    [InlineData(0.3)]
    [InlineData(2)]
    [InlineData(8)]
    public void Exponential_lives_make_a_poisson_count(double mean)
    {
        var chances = Renewals.CountChances(One(1, 1000), mean * 1000);
        for (var n = 0; n < chances.Count; n++)
            Assert.Equal(Poisson.PMF(mean, n), chances[n], 0.003);
    }

    /// <summary>A slow obvious version: a seeded simulation of 100 000 spans, within four standard errors and the grid's 0.004.</summary>
    [Theory]
    [InlineData(1.7, 2500)]
    [InlineData(3, 9000)]
    public void The_grid_agrees_with_simulated_renewals(double shape, double span)
    {
        const int Draws = 100_000;
        var draw = new Random(7);
        var counted = new int[60];
        for (var i = 0; i < Draws; i++)
        {
            var failures = 0;
            for (var at = Life(); at <= span; at += Life())
                failures++;
            counted[failures]++;
        }

        var chances = Renewals.CountChances(One(shape, 1000), span);
        for (var n = 0; n < chances.Count && n < counted.Length; n++)
        {
            var share = counted[n] / (double)Draws;
            Assert.Equal(share, chances[n], (4 * Math.Sqrt(Math.Max(share, 1e-5) / Draws)) + 0.004);
        }

        double Life() => 1000 * Math.Pow(-Math.Log(1 - draw.NextDouble()), 1 / shape);
    }

    /// <summary>Elementary renewal theorem with its second term, span/mean + (v−1)/2: both sides of the switch to the limit.</summary>
    [Theory]
    [InlineData(19.5)]
    [InlineData(20.5)]
    [InlineData(200)]
    public void Many_failures_follow_the_renewal_theorem(double lives)
    {
        var life = One(1.7, 1000);
        var chances = Renewals.CountChances(life, lives * life.Mean);
        var variation = life.Variance / (life.Mean * life.Mean);
        var mean = chances.Select((chance, n) => n * chance).Sum();
        Assert.Equal(1, mean / (lives + ((variation - 1) / 2)), 0.01);
    }

    [Fact]
    public void Chances_add_to_one_and_none_fail_in_no_time() => Gen.Select(Gen.Double[0.8, 4], Gen.Double[0, 60_000], Gen.Double[0, 1])
        .Sample((shape, span, share) =>
        {
            var mixture = new WeibullMixture(share, new Weibull(shape, 10_000), new Weibull(shape, 400));
            var chances = Renewals.CountChances(mixture, span);
            return Math.Abs(chances.Sum() - 1) < 1e-9 && chances.All(chance => chance >= 0)
                && (span > 0 || chances.Count == 1);
        });

    /// <summary>The grid's error falls with its step: from 80 steps on, the mean of the counts is right to 1 %.</summary>
    [Fact]
    public void Eighty_steps_are_enough_for_one_percent() => Gen.Select(Gen.Double[1.2, 3], Gen.Double[100, 15_000], Gen.Double[0.9, 1])
        .Sample((shape, span, share) =>
        {
            var mixture = new WeibullMixture(share, new Weibull(shape, 3000), new Weibull(shape, 400));
            return Math.Abs((Mean(80) / Mean(1600)) - 1) < 0.01;

            double Mean(int steps) => Renewals.CountChances(mixture, span, steps).Select((chance, n) => n * chance).Sum();
        }, iter: 200);

    /// <summary>With one failure or none, the chance of none is the survival itself.</summary>
    [Fact]
    public void The_chance_of_no_failure_is_the_survival() =>
        Assert.Equal(One(1.7, 1000).Survival(600), Renewals.CountChances(One(1.7, 1000), 600)[0], 1e-9);
}
