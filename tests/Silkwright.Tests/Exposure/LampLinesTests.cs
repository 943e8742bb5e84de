using Silkwright.Emulsion;
using Silkwright.Exposure;
using Silkwright.Exposure.Spectra;

namespace Silkwright.Tests.Exposure;

/// <summary>The light of lamps by wavelength, and what belongs to one machine alone.</summary>
public sealed class LampLinesTests
{
    public static TheoryData<LampKind, double?> Kinds => new()
    {
        { LampKind.MetalHalide, null }, { LampKind.TubeBank, null }, { LampKind.LedArray, null }, { LampKind.LedArray, 365 }, { LampKind.LedArray, 385 }, { LampKind.LedArray, 395 },
        { LampKind.LedArray, 405 }, { LampKind.Halogen, null },
    };

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_row_has_a_ground_and_the_shares_make_a_whole(LampKind kind, double? peakNm)
    {
        var bands = LampLines.Of(kind, peakNm);
        Assert.Equal(1, bands.Sum(band => band.Share), 1e-9);
        Assert.All(bands, band => Assert.True(band.ToNm > band.FromNm && band.Share > 0 && band.Ground.Length > 10));
    }

    /// <summary>Lines of mercury at 365.0, 404.7 and 435.8 nm, of gallium at 403.3 and 417.2 nm (NIST Atomic Spectra Database, from memory): each lies in a row of its own lamp, about as bright a nm as the lamp on the whole, or brighter.</summary>
    [Theory]
    [InlineData(LampKind.MetalHalide, 365.0)]
    [InlineData(LampKind.MetalHalide, 403.3)]
    [InlineData(LampKind.MetalHalide, 404.7)]
    [InlineData(LampKind.TubeBank, 365.0)]
    public void Published_lines_lie_where_the_table_has_light(LampKind kind, double nm)
    {
        var bands = LampLines.Of(kind, null);
        var mean = 1 / (bands.Max(band => band.ToNm) - bands.Min(band => band.FromNm));
        Assert.Contains(bands, band => band.FromNm < nm && nm < band.ToNm && band.Share / (band.ToNm - band.FromNm) >= 0.8 * mean);
    }

    /// <summary>Planck's law at 3000 K by a sum in steps of 1 nm, hc/k = 14 388 µm K (CODATA): the work lamp's rows.</summary>
    [Fact]
    public void A_work_lamp_glows_by_Plancks_law()
    {
        static double Glow(double from, double to)
        {
            var sum = 0.0;
            for (var nm = from + 0.5; nm < to; nm++)
                sum += Math.Pow(nm, -5) / (Math.Exp(1.4388e7 / (nm * 3000)) - 1);
            return sum;
        }

        foreach (var band in LampLines.Of(LampKind.Halogen, null))
            Assert.Equal(Glow(band.FromNm, band.ToNm) / Glow(380, 500), band.Share, 0.002);
    }

    /// <summary>An emulsion that ends at 400 nm uses most of a tube's light, little of a work lamp's: tubes for stencils give 350 to 420 nm. Common practice, no source.</summary>
    [Fact]
    public void Overlap_is_of_light_and_not_of_band_widths()
    {
        var ends = new StencilEmulsion { Id = "any", Family = EmulsionFamily.Photopolymer, SensitiveFromNm = 320, SensitiveToNm = 400 };
        Assert.InRange(LampSpectrum.Factor(new Lamp { Kind = LampKind.TubeBank }, ends).Value, 1, 1.6);
        Assert.Equal(10, LampSpectrum.Factor(new Lamp { Kind = LampKind.Halogen }, ends).Value, 1e-9);
    }

    /// <summary>Units of one machine say nothing of another: scaled by any factor, a machine's strips and its window scale alike and nothing else of the answer moves.</summary>
    [Fact]
    public void Units_belong_to_their_machine_and_are_never_turned_into_seconds()
    {
        ExposureWindow Of(double times) => ExposureModel.Window(ExposureCases.Usual(EmulsionFamily.DualCure) with
        {
            Lamp = new Lamp { Kind = LampKind.MetalHalide, Counts = ExposureCount.Units },
            Tests = [new StepTest(40 * times, 6), new StepTest(80 * times, 8)],
        });
        var (one, other) = (Of(1), Of(7.3));
        Assert.Equal(ExposureCount.Units, one.Counts);
        Assert.Equal(7.3, other.Least.Value / one.Least.Value, 1e-6);
        Assert.Equal(7.3, other.Most.Value / one.Most.Value, 1e-6);
        Assert.Equal(one.LatitudeStops, other.LatitudeStops, 1e-9);
    }

    /// <summary>A radiometer's reading of one lamp changes nothing where the emulsion's curve is not known: there is nothing to divide.</summary>
    [Fact]
    public void A_radiometer_without_a_curve_tells_no_time()
    {
        var usual = ExposureCases.Usual();
        Assert.Equal(ExposureModel.Window(usual).Least, ExposureModel.Window(usual with { Lamp = usual.Lamp with { IrradianceMwPerCm2 = 12 } }).Least);
    }
}
