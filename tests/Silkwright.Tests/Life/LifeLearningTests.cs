using CsCheck;
using MathNet.Numerics.Distributions;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Life;

namespace Silkwright.Tests.Life;

/// <summary>What counted stencils teach. Sources of the checks: simulation (Talts and others 2018, from memory) and what any reader of runs would expect.</summary>
public class LifeLearningTests
{
    private static readonly Gen<CountedStencil> Any = Gen.Select(
        Gen.Bool.Select(first => first ? "a" : "b"), Gen.Long[1, 60_000], Gen.Bool, (emulsion, impressions, broke) => Stencil(emulsion, impressions, broke));

    [Fact]
    public void Without_a_count_the_rule_of_thumb_stands() => Assert.Null(new LifeLearning([]).For("a", Case(1000)));

    [Fact]
    public void A_shop_that_has_counted_is_measured_here_and_says_how_often()
    {
        var life = StencilLife.Of(Case(2000) with
        {
            Learnt = new LifeLearning([Stencil("a", 9000, true), Stencil("A", 12_000, false), Stencil("b", 3000, false)]).For("a", Case(2000)),
        });
        Assert.Equal(Ground.MeasuredHere, life.MedianImpressions.Ground);
        Assert.Contains(life.Notes, note => note.Text.StartsWith("Of such stencils 2 were counted in this shop, 1 until it broke, of others 1:", StringComparison.Ordinal));
    }

    [Fact]
    public void Many_stencils_counted_to_their_end_outweigh_the_rule_of_thumb()
    {
        // 60 ends at the quantiles of a Weibull law of shape 1.7 with a median of 60,000, twice what the rule of thumb gives.
        var ends = Enumerable.Range(0, 60).Select(i => (long)(60_000 * Math.Pow(Math.Log(1 - ((i + 0.5) / 60)) / Math.Log(0.5), 1 / 1.7)));
        var learnt = new LifeLearning([.. ends.Select(end => Stencil("a", end, true))]).For("a", Case(1000))!;
        var usual = StencilLife.Of(Case(0)).MedianImpressions;
        Assert.InRange(learnt.Factor.Value, 1.8, 2.4);
        Assert.True(learnt.Factor.High / learnt.Factor.Low < 0.6 * usual.High / usual.Low);
    }

    /// <summary>Whatever breaks them, a shop whose every stencil broke at 300 is not told that the next will print 1,000.</summary>
    [Theory]
    [InlineData(8)]
    [InlineData(100)]
    public void A_shop_whose_stencils_all_break_early_is_not_promised_a_run(int stencils)
    {
        CountedStencil[] early = [.. Enumerable.Range(0, stencils).Select(_ => Stencil("a", 300, true))];
        var life = StencilLife.Of(Case(1000) with { Learnt = new LifeLearning(early).For("a", Case(1000)) });
        Assert.True(life.FinishPercent.Value < 50, $"{life.FinishPercent.Value}");
    }

    [Fact]
    public void A_sound_stencil_that_ran_longer_never_shortens_the_life() =>
        Gen.Select(Any.Array[0, 6], Gen.Long[1, 30_000], Gen.Long[1, 30_000]).Sample((others, shorter, more) =>
            Factor([.. others, Stencil("a", shorter, false)]) <= Factor([.. others, Stencil("a", shorter + more, false)]) + 1e-9, iter: 60);

    [Fact]
    public void A_break_never_lengthens_the_life_beside_coming_off_sound_there() =>
        Gen.Select(Any.Array[0, 6], Gen.Long[1, 30_000]).Sample((others, at) =>
            Factor([.. others, Stencil("a", at, true)]) <= Factor([.. others, Stencil("a", at, false)]) + 1e-9, iter: 60);

    [Fact]
    public void Another_emulsions_stencils_teach_less_than_its_own()
    {
        CountedStencil[] ends = [.. new[] { 2000, 3000, 4000, 5000 }.Select(end => Stencil("b", end, true))];
        var own = new LifeLearning(ends).For("b", Case(1000))!;
        var other = new LifeLearning(ends).For("a", Case(1000))!;
        Assert.True(own.Factor.Value < other.Factor.Value && other.Factor.Value < 1);
        Assert.Equal((0, 4, Ground.CommonPractice), (other.Counted, other.Others, other.Factor.Ground));
    }

    /// <summary>
    /// Shops drawn from the law that the learning takes for granted, their stencils counted by code of this test: an honest 90 % interval holds the
    /// true life in 90 % of them.
    /// </summary>
    [Fact]
    public void Its_interval_holds_the_true_life_as_often_as_it_says()
    {
        const int shops = 800;
        var random = new Random(5);
        var usual = StencilLife.Of(Case(0)).MedianImpressions;
        var spread = Math.Log(50_000.0 / 15_000) / 3.29;
        var held = 0;
        for (var i = 0; i < shops; i++)
        {
            var shop = Math.Sqrt(0.4) * Normal.Sample(random, 0, 1);
            var faults = Math.Exp(Normal.Sample(random, Math.Log(Math.Sqrt(0.005 * 0.06)), Math.Log(0.06 / 0.005) / 3.29));
            var factors = new[] { "a", "b" }.ToDictionary(id => id, _ => Math.Exp(spread * (shop + (Math.Sqrt(0.6) * Normal.Sample(random, 0, 1)))));
            CountedStencil[] counted =
            [
                .. Enumerable.Range(0, random.Next(1, 16)).Select(_ =>
                {
                    var id = random.Next(2) == 0 ? "a" : "b";
                    var median = factors[id] * Math.Sqrt(15_000.0 * 50_000);
                    var end = (random.NextDouble() < faults ? Math.Min(400, 0.2 * median) : median)
                        * Math.Pow(Math.Log(1 - random.NextDouble()) / Math.Log(0.5), 1 / 1.7);
                    var run = 500 * Math.Pow(80, random.NextDouble());
                    return Stencil(id, Math.Max(1, (long)Math.Min(run, end)), end < run);
                }),
            ];
            var factor = new LifeLearning(counted).For("a", Case(1000))!.Factor;
            held += factor.Low <= factors["a"] && factors["a"] <= factor.High ? 1 : 0;
        }

        Assert.InRange(100.0 * held / shops, 87, 93);
        Assert.InRange(usual.Value, 15_000, 50_000);
    }

    private static double Factor(CountedStencil[] counted) => new LifeLearning(counted).For("a", Case(1000))!.Factor.Value;

    private static CountedStencil Stencil(string emulsion, long impressions, bool broke) => new(emulsion, Case(impressions), broke);

    private static LifeCase Case(long impressions) => new()
    {
        Family = EmulsionFamily.DualCure,
        Ink = InkKind.Plastisol,
        MadeForInk = true,
        EomUm = Estimate.Exact(10, Ground.MeasuredHere),
        Impressions = impressions,
    };
}
