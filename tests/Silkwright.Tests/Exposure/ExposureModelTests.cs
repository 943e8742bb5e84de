using CsCheck;
using Silkwright.Contracts;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Exposure;

namespace Silkwright.Tests.Exposure;

public class ExposureModelTests
{
    /// <summary>Usual times on dyed 120/34 mesh, dry, by lamp and family. Common practice, no source: a factor of 2 to 3 is normal.</summary>
    [Theory]
    [InlineData(LampKind.MetalHalide, EmulsionFamily.Diazo, 60, 150)]
    [InlineData(LampKind.MetalHalide, EmulsionFamily.DualCure, 40, 90)]
    [InlineData(LampKind.MetalHalide, EmulsionFamily.Photopolymer, 8, 25)]
    [InlineData(LampKind.LedArray, EmulsionFamily.Diazo, 30, 90)]
    [InlineData(LampKind.LedArray, EmulsionFamily.DualCure, 15, 60)]
    [InlineData(LampKind.LedArray, EmulsionFamily.Photopolymer, 3, 15)]
    [InlineData(LampKind.TubeBank, EmulsionFamily.Diazo, 360, 720)]
    public void Before_any_test_the_aim_is_of_the_trades_order_of_magnitude(
        LampKind lamp, EmulsionFamily family, double low, double high)
    {
        // Light at all angles is poor for fine work: under tubes lines of 150 µm are asked for.
        var window = ExposureModel.Window(ExposureCases.Usual(family, lamp) with { FinestLineUm = lamp == LampKind.TubeBank ? 150 : 100 });
        Assert.InRange(window.Aim!.Value, low / 1.5, high * 1.5);
    }

    [Fact]
    public void Before_any_test_the_window_is_at_least_threefold_wide_and_says_so() => ExposureCases.Any.Sample(exposure =>
    {
        var window = ExposureModel.Window(exposure);
        return (window.Aim is null || window.Most.High >= 3 * window.Least.Low)
            && window.Least.High >= 3 * window.Least.Low
            && window.Least.Ground == Ground.CommonPractice
            && window.Notes.Any(note => note.Text.Contains("step test", StringComparison.Ordinal));
    });

    /// <summary>A window is as likely as not where its ends meet, and a closed one is told with the chance that it is open after all.</summary>
    [Fact]
    public void A_window_is_told_with_the_chance_that_there_is_one() => Gen.Select(ExposureCases.Any, Gen.Double[40, 300]).Sample((exposure, line) =>
    {
        var window = ExposureModel.Window(exposure with { FinestLineUm = line });
        return (window.Aim is null) == (window.OpenChancePercent <= 50) && window.OpenChancePercent is >= 0 and <= 100
            && AimWords.Of(window).Contains(window.Aim is null ? "some exposure does both after all" : "does both in about", StringComparison.Ordinal);
    });

    /// <summary>Dose that still works: diazo −15/+60 %, dual-cure −15/+40 %, photopolymer −10/+20 %. Common practice, no source.</summary>
    [Fact]
    public void Slow_families_have_the_wider_window()
    {
        double Stops(EmulsionFamily family) => ExposureModel.Window(ExposureCases.Usual(family) with { FinestLineUm = 80 }).LatitudeStops;
        Assert.True(Stops(EmulsionFamily.Diazo) > Stops(EmulsionFamily.DualCure));
        Assert.True(Stops(EmulsionFamily.DualCure) > Stops(EmulsionFamily.Photopolymer));
        Assert.InRange(Stops(EmulsionFamily.Diazo), 0.5, 1.5);
        Assert.InRange(Stops(EmulsionFamily.Photopolymer), 0.2, 0.8);
    }

    /// <summary>Lines a well-made stencil holds: 60 to 100 µm on 120/34 or finer. Common practice, no source.</summary>
    [Fact]
    public void A_fine_mesh_holds_the_lines_printers_expect() =>
        Assert.InRange(ExposureModel.Window(ExposureCases.Usual()).FinestHeldUm.Value, 55, 105);

    /// <summary>A stated minimum of 2.0 for film density (trade source), 3.0 as usual target (common practice).</summary>
    [Fact]
    public void The_film_density_asked_for_is_the_trades() =>
        Assert.InRange(ExposureModel.Window(ExposureCases.Usual()).RequiredFilmDensityUv, 1.9, 3.0);

    [Fact]
    public void Dyed_mesh_never_shortens_the_exposure() => ExposureCases.Any.Sample(exposure => NeitherEndLower(
        exposure with { Mesh = exposure.Mesh with { Dyed = true } }, exposure with { Mesh = exposure.Mesh with { Dyed = false } }));

    /// <summary>Start factor 1.5, range 1.3 to 2.2, on mesh of the same geometry. Common practice, no source.</summary>
    [Fact]
    public void Dyed_mesh_asks_about_half_as_much_again()
    {
        var dyed = ExposureCases.Usual();
        var white = dyed with { Mesh = dyed.Mesh with { Dyed = false } };
        Assert.InRange(ExposureModel.Window(dyed).Least.Value / ExposureModel.Window(white).Least.Value, 1.3, 2.2);
    }

    /// <summary>
    /// What cures through behind a thread, walls left out. The most may fall: light runs farther sideways in more coat over the threads, which the trade knows as coarse stencils holding
    /// coarse lines.
    /// </summary>
    [Fact]
    public void A_thicker_coat_never_cures_sooner() => ExposureCases.Any.Select(Gen.Double[0, 60]).Sample((any, more) =>
    {
        var exposure = any with { FinestGapUm = null };
        return ExposureModel.Window(exposure with { StencilUm = exposure.StencilUm.Map(um => um + more) }).Least.Value >= ExposureModel.Window(exposure).Least.Value * (1 - 1e-9);
    });

    [Fact]
    public void A_farther_point_lamp_never_shortens_the_exposure() => ExposureCases.Any.Select(Gen.Double[1, 3]).Sample((exposure, more) =>
        NeverShorter(
            exposure with { Lamp = exposure.Lamp with { Kind = LampKind.MetalHalide, DistanceMm = 800 * more } },
            exposure with { Lamp = exposure.Lamp with { Kind = LampKind.MetalHalide, DistanceMm = 800 } }));

    /// <summary>Inverse square: from 1.0 to 1.5 m a point lamp takes 2.25 times as long.</summary>
    [Fact]
    public void A_point_lamp_half_as_far_again_takes_two_and_a_quarter_times_as_long()
    {
        var near = ExposureCases.Usual();
        var far = near with { Lamp = near.Lamp with { DistanceMm = 1500 } };
        Assert.Equal(2.25, ExposureModel.Window(far).Least.Value / ExposureModel.Window(near).Least.Value, 1e-9);
        Assert.Equal(2.25, ExposureModel.Window(far).Aim!.Value / ExposureModel.Window(near).Aim!.Value, 1e-3);
    }

    [Fact]
    public void The_distance_of_an_array_changes_nothing_but_a_note()
    {
        var array = ExposureCases.Usual(lamp: LampKind.LedArray);
        var given = array with { Lamp = array.Lamp with { DistanceMm = 50 } };
        Assert.Equal(ExposureModel.Window(array).Aim, ExposureModel.Window(given).Aim);
        Assert.Contains(ExposureModel.Window(given).Notes, note => note.Text.Contains("inverse square", StringComparison.Ordinal));
    }

    [Fact]
    public void Finer_detail_never_raises_the_most() => ExposureCases.Any.Select(Gen.Double[0.2, 1], Gen.Double[0.2, 1])
        .Sample((exposure, line, gap) =>
        {
            var finer = exposure with { FinestLineUm = line * exposure.FinestLineUm, FinestGapUm = gap * exposure.FinestGapUm };
            ExposureWindow fine = ExposureModel.Window(finer), coarse = ExposureModel.Window(exposure);
            return fine.Most.Value <= coarse.Most.Value * (1 + 1e-9) && fine.Least.Value >= coarse.Least.Value * (1 - 1e-9);
        });

    [Fact]
    public void A_faster_emulsion_never_takes_longer() => ExposureCases.Any.Select(Gen.Double[0.05, 1], Gen.Double[0.1, 1])
        .Sample((exposure, relative, faster) => NeverShorter(
            exposure with { Emulsion = exposure.Emulsion with { RelativeExposure = relative } },
            exposure with { Emulsion = exposure.Emulsion with { RelativeExposure = relative * faster } }));

    [Fact]
    public void The_aim_lies_inside_the_window_or_there_is_none() => ExposureCases.Any.Sample(exposure =>
    {
        var window = ExposureModel.Window(exposure);
        return window.Least.Value < window.Most.Value
            ? window.Aim is { } aim && aim.Value >= window.Least.Value * (1 - 1e-9) && aim.Value <= window.Most.Value * (1 + 1e-9)
                && window.OpensBy.Count == 0 && window.LatitudeStops > 0
            : window.Aim is null && window.OpensBy.Count > 0 && window.LatitudeStops <= 0;
    });

    [Fact]
    public void Latitude_is_told_in_stops_and_in_wedge_steps()
    {
        var window = ExposureModel.Window(ExposureCases.Usual());
        Assert.Equal(Math.Log2(window.Most.Value / window.Least.Value), window.LatitudeStops, 1e-9);
        Assert.Equal(Math.Log10(window.Most.Value / window.Least.Value) / 0.15, window.LatitudeSteps, 1e-9);
    }

    [Fact]
    public void Drivers_make_a_hundred_percent_and_lead_with_the_unknown_speed()
    {
        var drivers = ExposureModel.Window(ExposureCases.Usual()).Drivers;
        Assert.Equal(100, drivers.Sum(driver => driver.EffectPercent), 1e-6);
        Assert.Equal("speed of lamp and emulsion", drivers[0].Name);
    }

    [Fact]
    public void A_leaking_film_shuts_the_window_and_a_denser_one_is_named_first()
    {
        var window = ExposureModel.Window(ExposureCases.Usual() with { Film = new FilmDensity(1.5, 0.07), FinestLineUm = 300 });
        Assert.Null(window.Aim);
        Assert.Contains("denser film", window.OpensBy[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Lines_too_fine_for_white_mesh_ask_for_dyed_mesh_or_wider_lines()
    {
        var usual = ExposureCases.Usual(EmulsionFamily.Photopolymer);
        var window = ExposureModel.Window(usual with { Mesh = usual.Mesh with { Dyed = false }, FinestLineUm = 50 });
        Assert.Null(window.Aim);
        Assert.Contains(window.OpensBy, text => text.Contains("Dyed mesh", StringComparison.Ordinal));
        Assert.Contains("wider", window.OpensBy[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_out_of_range_is_refused()
    {
        var usual = ExposureCases.Usual();
        Assert.Throws<ArgumentOutOfRangeException>(() => ExposureModel.Window(usual with { FinestLineUm = 0 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => ExposureModel.Window(usual with { Lamp = usual.Lamp with { DistanceMm = -1 } }));
        Assert.Throws<ArgumentOutOfRangeException>(() => ExposureModel.Window(usual with { Tests = [new StepTest(0)] }));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => ExposureModel.Window(usual with { Film = new FilmDensity(double.NaN, 0) }));
    }

    private static bool NeitherEndLower(ExposureCase longer, ExposureCase shorter)
    {
        ExposureWindow more = ExposureModel.Window(longer), less = ExposureModel.Window(shorter);
        return more.Least.Value >= less.Least.Value * (1 - 1e-9) && more.Most.Value >= less.Most.Value * (1 - 1e-9);
    }

    /// <summary>Where only the level differs, the aim goes with the ends.</summary>
    private static bool NeverShorter(ExposureCase longer, ExposureCase shorter)
    {
        ExposureWindow more = ExposureModel.Window(longer), less = ExposureModel.Window(shorter);
        return NeitherEndLower(longer, shorter)
            && (more.Aim is null || less.Aim is null || more.Aim.Value >= less.Aim.Value * (1 - 1e-9));
    }
}
