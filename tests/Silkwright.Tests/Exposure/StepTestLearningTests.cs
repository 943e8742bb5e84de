using CsCheck;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Exposure;

namespace Silkwright.Tests.Exposure;

public class StepTestLearningTests
{
    private static ExposureWindow With(params StepTest[] strips) =>
        ExposureModel.Window(ExposureCases.Usual(EmulsionFamily.DualCure, LampKind.LedArray) with { Tests = strips });

    /// <summary>
    /// The wedge rule: step 5 at 60 s asks for 2 steps more to reach 7, about 120 s (10^0.30). The aim must come near, and hold it.
    /// </summary>
    [Fact]
    public void A_solid_step_puts_the_aim_where_the_wedge_rule_puts_it()
    {
        var aim = With(new StepTest(60, SolidStep: 5)).Aim!;
        Assert.InRange(aim.Value, 120 / 1.4, 120 * 1.4);
        Assert.True(aim.Low < 119.7 && 119.7 < aim.High);
    }

    [Fact]
    public void Whatever_the_shops_true_time_the_strips_find_it() => Gen.Select(Gen.Double[5, 400], Gen.Int[4, 10]).Sample((right, step) =>
    {
        // A strip read exactly: its time stands off the right one by the steps it reads off 7.
        var strip = new StepTest(right * Math.Pow(10, 0.15 * (step - 7)), step);
        var aim = With(strip, strip, strip).Aim!;
        return aim.Low < right && right < aim.High && aim.Value > right / 1.5 && aim.Value < right * 1.5;
    });

    [Fact]
    public void Strips_narrow_the_window_and_make_it_measured()
    {
        var before = With();
        var after = With(new StepTest(60, 6), new StepTest(85, 7), new StepTest(120, 8));
        Assert.Equal(Ground.CommonPractice, before.Least.Ground);
        Assert.Equal(Ground.MeasuredHere, after.Least.Ground);
        Assert.Equal(Ground.MeasuredHere, after.Aim!.Ground);
        Assert.True(after.Least.High / after.Least.Low < before.Least.High / before.Least.Low);
        Assert.DoesNotContain(after.Notes, note => note.Text.Contains("No step test", StringComparison.Ordinal));
    }

    [Fact]
    public void More_strips_that_agree_narrow_it_further()
    {
        var one = With(new StepTest(60, 7)).Least;
        var many = With(new StepTest(30, 5), new StepTest(42, 6), new StepTest(60, 7), new StepTest(85, 8)).Least;
        Assert.True(many.High / many.Low < one.High / one.Low);
    }

    [Fact]
    public void A_soft_squeegee_side_bounds_the_least_from_below()
    {
        var window = With(new StepTest(80, SqueegeeSideSoft: true));
        Assert.True(window.Least.Value > 80);
        Assert.True(window.Least.Value > With().Least.Value);
    }

    [Fact]
    public void Soft_below_and_hard_above_put_the_least_between()
    {
        var window = With(new StepTest(50, SqueegeeSideSoft: true), new StepTest(70, SqueegeeSideSoft: false));
        Assert.InRange(window.Least.Value, 45, 80);
    }

    [Fact]
    public void A_held_line_raises_the_most_and_a_lost_one_lowers_it()
    {
        var cure = new StepTest(60, 7, SqueegeeSideSoft: false);
        var held = With(cure, new StepTest(120, FinestLineUm: 80)).Most;
        var lost = With(cure, new StepTest(120, FinestLineUm: 200)).Most;
        Assert.True(held.Value > lost.Value);
        Assert.True(held.Value > 110);
        Assert.True(lost.Value < 130);
        Assert.Equal(Ground.MeasuredHere, held.Ground);
    }

    [Fact]
    public void A_lost_wall_raises_the_least()
    {
        var lost = With(new StepTest(60, FinestGapUm: 200)).Least.Value;
        var held = With(new StepTest(60, FinestGapUm: 60)).Least.Value;
        Assert.True(lost > held);
    }

    [Fact]
    public void A_damp_strip_teaches_nothing_and_says_so()
    {
        var damp = With(new StepTest(300, 3, SqueegeeSideSoft: true, Damp: true));
        Assert.Equal(With().Least, damp.Least);
        Assert.Equal(With().Most, damp.Most);
        Assert.Contains(damp.Notes, note => note.Text.Contains("damp", StringComparison.Ordinal));
    }

    private static readonly DateOnly Spring = new(2026, 5, 4);

    [Fact]
    public void A_test_of_another_day_counts_more_than_more_strips_of_the_same()
    {
        StepTest[] day = [new(42, 6, true) { On = Spring }, new(60, 7, false) { On = Spring }, new(85, 8, false) { On = Spring }];
        var same = With([.. day, .. day]).Least;
        var another = With([.. day, .. day.Select(strip => strip with { On = Spring.AddDays(1) })]).Least;
        Assert.True(another.High / another.Low < same.High / same.Low);
    }

    [Fact]
    public void An_old_test_counts_less_than_a_fresh_one()
    {
        var usual = ExposureCases.Usual(EmulsionFamily.DualCure, LampKind.LedArray) with { Tests = [new StepTest(60, 7, false) { On = Spring }] };
        var fresh = ExposureModel.Window(usual with { On = Spring }).Least;
        var old = ExposureModel.Window(usual with { On = Spring.AddYears(3) }).Least;
        Assert.True(old.High / old.Low > fresh.High / fresh.Low);
    }

    /// <summary>Common practice, no source: a metal halide lamp asks 1.4 times at 1250 h. A strip of a new lamp is read so on the old one.</summary>
    [Fact]
    public void A_strip_made_on_a_younger_lamp_is_read_on_todays()
    {
        var strips = new StepTest(60, 7, false) { LampHours = 0 };
        var aged = ExposureCases.Usual() with { Lamp = new Lamp { Kind = LampKind.MetalHalide, DistanceMm = 1000, Hours = 1250 } };
        var then = ExposureModel.Window(aged with { Tests = [strips with { LampHours = 1250 }] }).Least.Value;
        Assert.Equal(1.4, ExposureModel.Window(aged with { Tests = [strips] }).Least.Value / then, 0.06);
    }

    /// <summary>Softness speaks of the strip's own coat: on a coat thinner than the job's, the same softness asks more of the job.</summary>
    [Fact]
    public void A_strip_on_a_thinner_coat_asks_more_of_the_jobs()
    {
        var asTheJob = With(new StepTest(80, SqueegeeSideSoft: true) { EomUm = 5 }).Least.Value;
        Assert.True(With(new StepTest(80, SqueegeeSideSoft: true) { EomUm = 1 }).Least.Value > asTheJob);
    }

    private static readonly Gen<StepTest> AnyStrip = Gen.Select(Gen.Double[1, 600], Gen.Int[0, 15], Gen.Bool, Gen.Bool, Gen.Int[0, 3]).Select(
        (amount, step, soft, held, day) => new StepTest(amount, step, soft, held ? 40 : 600) { On = Spring.AddDays(day) });

    /// <summary>However strips contradict each other and the model, there is an aim between the ends, or none and what would open the window.</summary>
    [Fact]
    public void Whatever_strips_say_least_never_passes_most_in_silence() => Gen.Select(ExposureCases.Any, AnyStrip.Array[1, 6]).Sample(
        (exposure, strips) => ExposureModel.Window(exposure with { Tests = strips }) is var window && (window.Aim is { } aim
            ? window.Least.Value <= aim.Value && aim.Value <= window.Most.Value && window.OpensBy.Count == 0
            : window.LatitudeStops <= 0 && window.OpensBy.Count > 0),
        iter: 200);

    [Fact]
    public void Units_of_a_machine_are_told_only_by_strips_on_it()
    {
        var units = ExposureCases.Usual(EmulsionFamily.DualCure) with { Lamp = new Lamp { Kind = LampKind.MetalHalide, Counts = ExposureCount.Units } };
        var without = ExposureModel.Window(units);
        Assert.Equal(ExposureCount.Seconds, without.Counts);
        Assert.Contains(without.Notes, note => note.Text.Contains("only a step test on it can tell", StringComparison.Ordinal));

        var with = ExposureModel.Window(units with { Tests = [new StepTest(3000, 7), new StepTest(2100, 6)] });
        Assert.Equal(ExposureCount.Units, with.Counts);
        Assert.InRange(with.Aim!.Value, 2000, 4500);
        Assert.Equal(Ground.MeasuredHere, with.Least.Ground);
    }
}
