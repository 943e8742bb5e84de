using CsCheck;
using Silkwright.Estimates;
using Silkwright.Life;

namespace Silkwright.Tests.Life;

public class SparesTests
{
    private static LifeResult Failing(params double[] chances) => new()
    {
        MedianImpressions = Estimate.Exact(1000, Ground.Model),
        WeibullShape = 1.7,
        FinishPercent = Estimate.Exact(100 * chances[0], Ground.Model),
        ExpectedFailures = Estimate.Exact(chances.Select((chance, n) => n * chance).Sum(), Ground.Model),
        FailureChances = chances,
        Curve = [],
    };

    /// <summary>
    /// By hand: no failure 0.5, one 0.3, two 0.2; spare 10, remake 20, stop 1 a minute for 60 or 5 minutes. Without a spare
    /// 0.3·80 + 0.2·160 = 56; with one 10 + 0.3·5 + 0.2·(5 + 80) = 28.5; with two 20 + 0.3·5 + 0.2·10 = 23.5; a third adds 10.
    /// </summary>
    [Fact]
    public void The_worked_example_buys_two_spares()
    {
        var advice = Spares.Advise(Failing(0.5, 0.3, 0.2), new SpareCosts(10, 20, 1, 60, 5));
        Assert.Equal(2, advice.Spares);
        Assert.Equal(23.5, advice.ExpectedCost, 1e-9);
        Assert.Equal([56, 28.5, 23.5, 33.5], advice.CostBySpares.Take(4).Select(cost => Math.Round(cost, 9)));
    }

    [Fact]
    public void A_stencil_that_never_fails_needs_no_spare() =>
        Assert.Equal(0, Spares.Advise(Failing(1), new SpareCosts(10, 20, 1, 60, 5)).Spares);

    [Fact]
    public void A_dearer_stop_never_asks_for_fewer_spares() => Gen.Select(Gen.Double[0, 5], Gen.Double[0, 5]).Sample((stop, more) =>
    {
        int Count(double perMinute) => Spares.Advise(Failing(0.4, 0.3, 0.2, 0.1), new SpareCosts(12, 15, perMinute, 60, 10)).Spares;
        return Count(stop + more) >= Count(stop);
    });

    /// <summary>Only a mean of 0.7 known: Poisson, no failure 0.4966; one spare too dear to pay leaves 0.7 remakes of 80.</summary>
    [Fact]
    public void Where_only_the_mean_is_known_failures_count_as_poisson()
    {
        var life = Failing(1) with { FailureChances = [], ExpectedFailures = Estimate.Exact(0.7, Ground.Model) };
        var advice = Spares.Advise(life, new SpareCosts(1000, 20, 1, 60, 5));
        Assert.Equal(0, advice.Spares);
        Assert.Equal(56, advice.ExpectedCost, 1e-6);
    }

    [Fact]
    public void A_negative_cost_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Spares.Advise(Failing(1), new SpareCosts(-1, 20, 1, 60, 5)));
}
