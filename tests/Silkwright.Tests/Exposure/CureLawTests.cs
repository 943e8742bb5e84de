using CsCheck;
using Silkwright.Exposure;

namespace Silkwright.Tests.Exposure;

public class CureLawTests
{
    private static readonly Gen<CureLaw> Any = Gen.Select(Gen.Double[20, 300], Gen.Double[0, 1], Gen.Double[2, 400], Gen.Double[1, 100], CureLaw.Of);

    /// <summary>Colombo and others 2025, slurry S1: Dp 76.2 µm, Ec 14.3 mJ/cm²; depth at 100 and 200, dose for 200 µm.</summary>
    [Fact]
    public void Without_bleaching_it_is_the_published_working_curve()
    {
        var law = CureLaw.Of(76.2, 0, 1, 14.3);
        Assert.Equal(148.20, law.DepthUm(100), 0.01);
        Assert.Equal(201.02, law.DepthUm(200), 0.01);
        Assert.Equal(197.34, law.DoseMjPerCm2(200), 0.01);
    }

    [Fact]
    public void Below_the_critical_dose_nothing_cures_and_more_light_never_cures_less() => Gen.Select(Any, Gen.Double[1, 5]).Sample((law, more) =>
    {
        var dose = 1.3 * law.CriticalDoseMjPerCm2;
        return law.DepthUm(0.99 * law.CriticalDoseMjPerCm2) == 0 && law.DepthUm(dose) > 0 && law.DepthUm(dose * more) >= law.DepthUm(dose);
    });

    [Fact]
    public void The_dose_for_a_depth_cures_that_depth() => Gen.Select(Any, Gen.Double[1, 300]).Sample(
        (law, depth) => Math.Abs(law.DepthUm(law.DoseMjPerCm2(depth)) - depth) < 1e-6 * depth, iter: 300);

    [Fact]
    public void Light_and_sensitiser_marched_slice_by_slice_cure_as_deep() =>
        Assert.Equal(MarchedUm(0.012, 0.004, 0.02, critical: 15, dose: 120), new CureLaw(new BleachingCoat(0.012, 0.004, 0.02), 15).DepthUm(120), 0.3);

    /// <summary>A coat told by what comes through at 57 µm: marched through, the dose that was told cures 57 µm.</summary>
    [Theory]
    [InlineData(70, 0.8, 1)]
    [InlineData(85, 0.5, 0.4)]
    [InlineData(60, 1, 3)]
    [InlineData(70, 0, 1)]
    public void A_coat_told_by_one_depth_cures_that_depth_slice_by_slice(double lengthUm, double share, double ratio)
    {
        var (coat, critical) = CureLaw.OfStencil(57, lengthUm, share, ratio);
        Assert.Equal(57, MarchedUm(coat.BleachablePerUm, coat.LastingPerUm, coat.BleachCm2PerMj, critical, Math.Exp(57 / lengthUm)), 0.3);
    }

    /// <summary>Through the thickest stencil of the strongest coat the needed dose has no number; its logarithm has, and grows by what never bleaches.</summary>
    [Fact]
    public void The_logarithm_of_a_dose_goes_on_where_the_dose_has_no_number()
    {
        var law = CureLaw.Of(0.5, 0.5, 1, 1);
        Assert.Equal(1, (law.LogDose(2000) - law.LogDose(1999)), 1e-6);
        Assert.Equal(law.LogDose(140) + 10, law.LogDose(150), 1e-6);
    }

    /// <summary>The two equations marched down together in thin slices and short times, without the dose's own equation. [µm]</summary>
    private static double MarchedUm(double a, double b, double c, double critical, double dose)
    {
        const double slice = 0.1;
        var step = dose / 2400;
        var left = Enumerable.Repeat(1.0, 2000).ToArray();
        var got = new double[left.Length];
        for (var given = 0; given < 2400; given++)
        {
            var light = step;
            for (var i = 0; i < left.Length; i++)
            {
                var after = light * Math.Exp(-((a * left[i]) + b) * slice);
                var middle = (light + after) / 2;
                got[i] += middle;
                left[i] *= Math.Exp(-c * middle);
                light = after;
            }
        }

        return got.Count(at => at >= critical) * slice;
    }

    /// <summary>
    /// Common practice, no source: where the sensitiser bleaches wholly (diazo) the time grows about as the thickness, where little does it
    /// grows faster. Twice the thickness: the power of 2 is near 1, and near (57 µm over Dp 40 µm)/ln 2 = 2.06.
    /// </summary>
    [Fact]
    public void A_coat_that_bleaches_wholly_asks_dose_about_as_its_thickness()
    {
        Assert.InRange(CureLaw.Of(40, 1, 40, 20).ThicknessPower(57), 0.8, 1.1);
        Assert.Equal(2.056, CureLaw.Of(40, 0, 40, 20).ThicknessPower(57), 0.001);
    }

    /// <summary>Definition: 4 mW/cm² for 90 s are 360 mJ/cm²; Schwarzschild's exponent 1 is reciprocity.</summary>
    [Fact]
    public void Dose_is_irradiance_times_time_where_reciprocity_holds()
    {
        Assert.Equal(360, Reciprocity.DoseMjPerCm2(4, 90), 1e-12);
        Assert.Equal(4, Reciprocity.TimeFactor(4), 1e-12);
        Assert.Equal(16, Reciprocity.TimeFactor(4, 0.5), 1e-12);
    }
}
