using CsCheck;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Life;

namespace Silkwright.Tests.Life;

public class StencilLifeTests
{
    private static LifeCase Case(
        EmulsionFamily family, InkKind ink, bool made = true, StencilFinish finish = StencilFinish.None, long run = 1000) => new()
        {
            Family = family,
            Ink = ink,
            MadeForInk = made,
            Finish = finish,
            EomUm = Estimate.Within(10, 0.2, Ground.Model),
            Impressions = run,
        };

    private static readonly Gen<LifeCase> Any = Gen.Select(
        Gen.Enum<EmulsionFamily>(), Gen.Enum<InkKind>(), Gen.Bool, Gen.Enum<StencilFinish>(), Gen.Long[0, 100_000], Gen.Double[1, 40],
        Gen.Double[0, 1],
        (family, ink, made, finish, run, eom, cured) => Case(family, ink, made, finish, run) with
        {
            EomUm = Estimate.Within(eom, 0.3, Ground.CommonPractice),
            WellCured = cured,
        });

    /// <summary>Print lives of well-made stencils by ink and family. Common practice, no source.</summary>
    [Theory]
    [InlineData(EmulsionFamily.Diazo, InkKind.Plastisol, true, StencilFinish.None, 10_000, 30_000)]
    [InlineData(EmulsionFamily.DualCure, InkKind.Plastisol, true, StencilFinish.None, 15_000, 50_000)]
    [InlineData(EmulsionFamily.Photopolymer, InkKind.Plastisol, true, StencilFinish.None, 15_000, 50_000)]
    [InlineData(EmulsionFamily.Photopolymer, InkKind.WaterBased, false, StencilFinish.None, 100, 500)]
    [InlineData(EmulsionFamily.Photopolymer, InkKind.WaterBased, true, StencilFinish.None, 2_000, 10_000)]
    [InlineData(EmulsionFamily.DualCure, InkKind.WaterBased, true, StencilFinish.PostExposed, 2_000, 10_000)]
    [InlineData(EmulsionFamily.Photopolymer, InkKind.WaterBased, true, StencilFinish.Hardened, 10_000, 50_000)]
    [InlineData(EmulsionFamily.Photopolymer, InkKind.Discharge, true, StencilFinish.None, 1_000, 5_000)]
    [InlineData(EmulsionFamily.DualCure, InkKind.Uv, true, StencilFinish.None, 5_000, 20_000)]
    public void Median_lives_are_the_trades(
        EmulsionFamily family, InkKind ink, bool made, StencilFinish finish, double low, double high)
    {
        var median = StencilLife.Of(Case(family, ink, made, finish)).MedianImpressions;
        Assert.InRange(median.Value, low, high);
        Assert.Equal(Ground.CommonPractice, median.Ground);
        Assert.True(median.High / median.Low >= 2);
    }

    /// <summary>A straight diazo made for water has run the same screens 50 000 to 75 000 impressions. Common practice, no source.</summary>
    [Fact]
    public void A_diazo_made_for_water_may_well_run_50_000_to_75_000()
    {
        var life = StencilLife.Of(Case(EmulsionFamily.Diazo, InkKind.WaterBased, finish: StencilFinish.PostExposed, run: 50_000));
        Assert.True(life.MedianImpressions.Low < 50_000 && life.MedianImpressions.High > 75_000);
        Assert.True(life.FinishPercent.Value > 50);
    }

    /// <summary>A plastisol emulsion breaks down in water-based ink. Common practice, no source.</summary>
    [Fact]
    public void A_plastisol_emulsion_does_not_finish_a_water_based_run() =>
        Assert.True(StencilLife.Of(Case(EmulsionFamily.Photopolymer, InkKind.WaterBased, made: false, run: 2000)).FinishPercent.High < 10);

    [Fact]
    public void More_impressions_never_raise_the_chance_to_finish() => Any.Select(Gen.Long[0, 50_000]).Sample((life, more) =>
    {
        LifeResult shorter = StencilLife.Of(life), longer = StencilLife.Of(life with { Impressions = life.Impressions + more });
        return longer.FinishPercent.Value <= shorter.FinishPercent.Value + 1e-9
            && longer.FinishPercent.Low <= shorter.FinishPercent.Low + 1e-9
            && longer.FinishPercent.High <= shorter.FinishPercent.High + 1e-9;
    });

    [Fact]
    public void Hardened_outlasts_post_exposed_outlasts_none() => Any.Sample(life =>
    {
        double Finish(StencilFinish finish) => StencilLife.Of(life with { Finish = finish }).FinishPercent.Value;
        return Finish(StencilFinish.Hardened) >= Finish(StencilFinish.PostExposed) - 1e-9
            && Finish(StencilFinish.PostExposed) >= Finish(StencilFinish.None) - 1e-9;
    });

    [Fact]
    public void An_emulsion_not_made_for_the_ink_is_never_better() => Any.Sample(life =>
        StencilLife.Of(life with { MadeForInk = false }).FinishPercent.Value
            <= StencilLife.Of(life with { MadeForInk = true }).FinishPercent.Value + 1e-9);

    [Fact]
    public void A_worse_cure_is_never_better() => Any.Sample(life =>
        StencilLife.Of(life with { WellCured = life.WellCured / 2 }).FinishPercent.Value <= StencilLife.Of(life).FinishPercent.Value + 1e-9);

    /// <summary>Rushed screens that look alike fail at 300 to 500 prints (trade source).</summary>
    [Fact]
    public void A_stencil_that_did_not_cure_through_fails_at_some_hundred_prints() =>
        Assert.InRange(
            StencilLife.Of(Case(EmulsionFamily.Photopolymer, InkKind.Plastisol) with { WellCured = 0 }).MedianImpressions.Value, 300, 500);

    [Fact]
    public void A_run_of_nothing_is_finished_without_failures()
    {
        var life = StencilLife.Of(Case(EmulsionFamily.Diazo, InkKind.Plastisol, run: 0));
        Assert.Equal(100, life.FinishPercent.Value);
        Assert.Equal(0, life.ExpectedFailures.Value);
    }

    [Fact]
    public void The_curve_falls_past_the_run_and_keeps_inside_its_band()
    {
        var life = StencilLife.Of(Case(EmulsionFamily.DualCure, InkKind.Plastisol, run: 5000));
        Assert.True(life.Curve[^1].Impressions > 5000);
        Assert.Equal(100, life.Curve[0].SoundPercent);
        Assert.All(life.Curve, point => Assert.True(point.LowPercent <= point.SoundPercent && point.SoundPercent <= point.HighPercent));
        Assert.All(life.Curve.Zip(life.Curve.Skip(1)), pair => Assert.True(pair.Second.SoundPercent <= pair.First.SoundPercent));
    }

    [Fact]
    public void A_hardened_stencil_says_that_it_cannot_be_reclaimed() =>
        Assert.Contains(
            StencilLife.Of(Case(EmulsionFamily.Diazo, InkKind.WaterBased, finish: StencilFinish.Hardened)).Notes,
            note => note.Text.Contains("reclaimed", StringComparison.Ordinal));

    [Fact]
    public void What_makes_no_sense_is_refused()
    {
        var life = Case(EmulsionFamily.Diazo, InkKind.Plastisol);
        Assert.Throws<ArgumentOutOfRangeException>(() => StencilLife.Of(life with { Impressions = -1 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => StencilLife.Of(life with { WellCured = 1.1 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => StencilLife.Of(life with { WellCured = double.NaN }));
    }
}
