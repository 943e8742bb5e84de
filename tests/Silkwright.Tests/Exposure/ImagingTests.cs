using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Exposure;

namespace Silkwright.Tests.Exposure;

/// <summary>Other ways than a film: what they change, as an order of things. Common practice, no source.</summary>
public sealed class ImagingTests
{
    private static ExposureWindow Of(Imaging imaging, LampKind lamp = LampKind.LedArray, double? spotUm = null, int? passes = null) =>
        ExposureModel.Window(ExposureCases.Usual(EmulsionFamily.DualCure, lamp) with { Lamp = new Lamp { Kind = lamp, Imaging = imaging, SpotUm = spotUm, Passes = passes } });

    private static double Ratio(ExposureWindow window) => window.Most.Value / window.Least.Value;

    /// <summary>Without air and film under it slanting light has no way to run.</summary>
    [Fact]
    public void A_mask_on_the_coat_holds_finer_lines_than_a_film() =>
        Assert.True(Ratio(Of(Imaging.PrintedMask)) > Ratio(Of(Imaging.Film)) && Of(Imaging.PrintedMask, LampKind.TubeBank).FinestHeldUm.Value < Of(Imaging.Film, LampKind.TubeBank).FinestHeldUm.Value);

    [Fact]
    public void A_wider_spot_never_holds_finer_lines()
    {
        var ratios = new double[] { 5, 10, 20, 40, 80 }.Select(spot => Ratio(Of(Imaging.Direct, spotUm: spot))).ToArray();
        Assert.Equal(ratios.OrderDescending(), ratios);
        Assert.True(Ratio(Of(Imaging.Direct, spotUm: 20, passes: 4)) <= Ratio(Of(Imaging.Direct, spotUm: 20)));
    }

    [Fact]
    public void Written_and_projected_light_have_no_usual_exposure_and_say_so()
    {
        foreach (var imaging in new[] { Imaging.Direct, Imaging.Projection })
        {
            var window = Of(imaging);
            Assert.True(window.Least.High / window.Least.Low > 50);
            Assert.Contains(window.Notes, note => note.Text.Contains("not known", StringComparison.Ordinal));
            Assert.Equal(Ground.CommonPractice, window.Least.Ground);
        }
    }

    [Fact]
    public void What_is_out_of_range_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Of(Imaging.Direct, spotUm: 0));
}
