using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Exposure;
using Silkwright.Exposure.Spectra;

namespace Silkwright.Tests.Exposure;

/// <summary>Which light each family answers to, and what that makes of a lamp whose line is named.</summary>
public sealed class FamilyAnswersTests
{
    [Fact]
    public void Every_family_has_rows_without_gaps_each_with_its_ground() => Assert.All(Enum.GetValues<EmulsionFamily>(), family =>
    {
        var bands = FamilyAnswers.Of(family);
        Assert.Equal(1, bands.Max(band => band.Answer));
        Assert.All(bands, band => Assert.True(band is { Answer: > 0 and <= 1, Ground.Length: > 4 } && band.ToNm > band.FromNm));
        Assert.All(bands.Zip(bands.Skip(1)), pair => Assert.Equal(pair.First.ToNm, pair.Second.FromNm));
    });

    /// <summary>Where the sensitisers absorb most: diazodiphenylamine about 375 nm (Kosar, Light-Sensitive Systems, 1965), styrylpyridinium about 344 nm (Ichimura and Watanabe 1980); both from memory.</summary>
    [Theory]
    [InlineData(EmulsionFamily.Diazo, 375)]
    [InlineData(EmulsionFamily.Photopolymer, 344)]
    public void A_family_answers_best_where_its_sensitiser_absorbs_most(EmulsionFamily family, double nm) =>
        Assert.Equal(1, FamilyAnswers.Of(family).Single(band => band.FromNm <= nm && nm < band.ToNm).Answer);

    /// <summary>By hand for 385 nm, even from 375 to 395: diazo 1 over ten of the twenty nanometres and 0.9 over the others.</summary>
    [Fact]
    public void An_answer_is_the_mean_over_the_lamps_light() => Assert.Equal(0.95, FamilyAnswers.To(EmulsionFamily.Diazo, LampLines.Of(LampKind.LedArray, 385)), 1e-12);

    /// <summary>Common practice, no source: long lines are slow on ready-to-use photopolymers, and slower beside short ones than they are on diazos.</summary>
    [Fact]
    public void Longer_lines_ask_for_longer_exposures_of_photopolymers_most_of_all()
    {
        double Factor(EmulsionFamily family, double peakNm) => LampSpectrum.Factor(new Lamp { Kind = LampKind.LedArray, PeakNm = peakNm }, Any(family)).Value;
        foreach (var family in Enum.GetValues<EmulsionFamily>())
            Assert.True(Factor(family, 365) < 1 && 1 < Factor(family, 405));
        Assert.True(Factor(EmulsionFamily.Photopolymer, 405) / Factor(EmulsionFamily.Photopolymer, 365) > 1.3 * Factor(EmulsionFamily.Diazo, 405) / Factor(EmulsionFamily.Diazo, 365));
    }

    [Fact]
    public void A_window_says_what_the_line_makes_of_the_exposure_and_how_unsure_that_is()
    {
        ExposureWindow Of(double? peakNm) => ExposureModel.Window(ExposureCases.Usual(EmulsionFamily.Photopolymer, LampKind.LedArray) with { Lamp = new Lamp { Kind = LampKind.LedArray, PeakNm = peakNm } });
        Assert.True(Of(405).Least.Value > 1.3 * Of(null).Least.Value);
        Assert.True(Of(405).Least.High / Of(405).Least.Low > Of(null).Least.High / Of(null).Least.Low);
        Assert.Contains(Of(405).Notes, note => note.Ground == Ground.CommonPractice && note.Text.Contains("about 405 nm", StringComparison.Ordinal));
        Assert.DoesNotContain(Of(null).Notes, note => note.Text.Contains("times the exposure", StringComparison.Ordinal));
    }

    /// <summary>Light of 500 nm is that of a yellow room, in which stencils are coated.</summary>
    [Theory]
    [InlineData(500, true)]
    [InlineData(365, false)]
    [InlineData(405, false)]
    public void Light_that_hardly_hardens_is_told_as_that(double peakNm, bool hardly) => Assert.Equal(
        hardly,
        ExposureModel.Window(ExposureCases.Usual(EmulsionFamily.Diazo, LampKind.LedArray) with { Lamp = new Lamp { Kind = LampKind.LedArray, PeakNm = peakNm } })
            .Notes.Any(note => note.Text.Contains("may never cure", StringComparison.Ordinal)));

    private static StencilEmulsion Any(EmulsionFamily family) => new() { Id = "any", Family = family };
}
