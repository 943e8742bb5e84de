using CsCheck;
using Silkwright.Choosing;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Exposure;

namespace Silkwright.Tests.Exposure;

/// <summary>Whether a lamp's light is the light an emulsion answers to, and what a radiometer tells with a working curve.</summary>
public sealed class LampSpectrumTests
{
    /// <summary>A diazo peaks at 370 to 380 nm and answers to 340 to 430 nm: every lamp made for stencils reaches it. From memory.</summary>
    [Theory]
    [InlineData(LampKind.MetalHalide, null)]
    [InlineData(LampKind.TubeBank, null)]
    [InlineData(LampKind.LedArray, null)]
    [InlineData(LampKind.LedArray, 365.0)]
    [InlineData(LampKind.LedArray, 405.0)]
    public void A_diazo_answers_to_every_lamp_made_for_stencils(LampKind kind, double? peakNm) =>
        Assert.False(LampSpectrum.Misses(Lamp(kind, peakNm), Band(340, 430)));

    /// <summary>A single line may miss a sensitiser: a ready-to-use one peaks at 340 nm and may end before 390 nm, a diode gives 405 nm. From memory.</summary>
    [Fact]
    public void A_single_line_may_miss_a_sensitiser()
    {
        Assert.True(LampSpectrum.Misses(Lamp(LampKind.LedArray, 405), Band(300, 380)));
        Assert.False(LampSpectrum.Misses(Lamp(LampKind.LedArray, 365), Band(300, 380)));
        Assert.True(LampSpectrum.Misses(Lamp(LampKind.LedArray, 405), Band(340, 430) with { LaidWith = Band(300, 380) }));
    }

    [Fact]
    public void What_is_not_told_changes_nothing()
    {
        Assert.Equal(1, LampSpectrum.Factor(Lamp(LampKind.LedArray, null), new StencilEmulsion { Id = "any", Family = EmulsionFamily.Photopolymer }).High);
        Assert.Equal(1, LampSpectrum.Factor(Lamp(LampKind.MetalHalide, null), Band(350, 450)).High);
    }

    [Fact]
    public void A_narrower_band_never_cures_faster() =>
        Gen.Select(Gen.Enum<LampKind>(), Gen.Double[300, 420], Gen.Double[5, 150], Gen.Double[0, 50]).Sample((kind, from, width, more) =>
        {
            var lamp = Lamp(kind, null);
            var (narrow, wide) = (LampSpectrum.Factor(lamp, Band(from, from + width)), LampSpectrum.Factor(lamp, Band(from - more, from + width + more)));
            Assert.True(narrow.Value >= wide.Value && wide.Low >= 1);
            if (LampSpectrum.Misses(lamp, Band(from - more, from + width + more)))
                Assert.True(LampSpectrum.Misses(lamp, Band(from, from + width)));
        });

    [Fact]
    public void Light_outside_the_band_lengthens_the_exposure_and_widens_it()
    {
        var (within, partly) = (Window(Band(340, 450), null), Window(Band(340, 400), null));

        Assert.True(partly.Least.Value > within.Least.Value);
        Assert.True(partly.Least.High / partly.Least.Low > within.Least.High / within.Least.Low);
        Assert.Contains(partly.Notes, note => note.Text.Contains("outside what", StringComparison.Ordinal));
    }

    [Fact]
    public void With_no_lamp_in_its_band_an_emulsion_may_not_be_used()
    {
        Lamp[] lamps = [Lamp(LampKind.LedArray, 405)];

        Assert.Contains("300 to 380 nm", HardLimits.NoLamp(Band(300, 380), lamps)!.Why, StringComparison.Ordinal);
        Assert.Null(HardLimits.NoLamp(Band(300, 380), [.. lamps, Lamp(LampKind.LedArray, 365)]));
        Assert.Null(HardLimits.NoLamp(Band(340, 430), lamps));
    }

    /// <summary>Twice the light halves the time that a dose takes (Bunsen and Roscoe's law of reciprocity).</summary>
    [Fact]
    public void The_stronger_the_lamp_and_the_smaller_the_critical_dose_the_shorter_the_exposure() =>
        Gen.Select(Gen.Double[1, 50], Gen.Double[1, 50], Gen.Double[1.1, 10]).Sample((irradiance, critical, times) =>
        {
            var now = Seconds(irradiance, critical);
            Assert.True(Seconds(irradiance * times, critical) < now);
            Assert.True(Seconds(irradiance, critical * times) > now);
            Assert.Equal(now, Seconds(irradiance * times, critical * times), now * 1e-9);
        });

    /// <summary>Two grounds together are narrower than either, and lie between them.</summary>
    [Fact]
    public void A_curve_and_a_radiometer_narrow_the_usual_exposure()
    {
        var usual = Window(Curve(10), null).Least;
        var both = Window(Curve(10), 5).Least;

        Assert.True(both.High / both.Low < usual.High / usual.Low);
    }

    /// <summary>
    /// By hand: Dp 95 µm, Hc 10 mJ/cm² and 57 µm of stencil take 10·e^0.6 = 18.22 mJ/cm²; a quarter more at 5 mW/cm² is 4.555 s. Weighed
    /// with 94.87 s (ln 2.5 squared against ln 3 squared) that is exp((4.5525/0.8396 + 1.5162/1.2069)/(1/0.8396 + 1/1.2069)) = 27.3 s.
    /// </summary>
    [Fact]
    public void The_two_are_weighed_by_their_spreads()
    {
        var lamp = Lamp(LampKind.MetalHalide, null) with { IrradianceMwPerCm2 = 5 };
        var seconds = CurveExposure.Seconds(Estimate.WithinFactor(94.87, 2.5, Ground.CommonPractice), 2.5, lamp, Curve(10));

        Assert.Equal(27.3, seconds.Value, 0.1);
    }

    private static double Seconds(double irradiance, double critical) => Window(Curve(critical), irradiance).Least.Value;

    private static ExposureWindow Window(StencilEmulsion emulsion, double? irradiance) => ExposureModel.Window(new ExposureCase
    {
        Mesh = new(61, 64),
        EomUm = Estimate.Within(12, 0.2, Ground.Model),
        StencilUm = Estimate.Within(110, 0.1, Ground.Model),
        Emulsion = emulsion,
        Lamp = Lamp(LampKind.MetalHalide, null) with { IrradianceMwPerCm2 = irradiance },
    });

    private static StencilEmulsion Curve(double critical) =>
        new() { Id = "measured", Family = EmulsionFamily.Diazo, PenetrationDepthUm = 95, CriticalDoseMjPerCm2 = critical };

    private static StencilEmulsion Band(double from, double to) =>
        new() { Id = "banded", Family = EmulsionFamily.Diazo, SensitiveFromNm = from, SensitiveToNm = to };

    private static Lamp Lamp(LampKind kind, double? peakNm) => new() { Id = "lamp", Kind = kind, PeakNm = peakNm };
}
