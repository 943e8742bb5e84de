using Silkwright.Exposure;

namespace Silkwright.Tests.Published;

/// <summary>
/// Bleaching after Dill, Hornberger, Hauge, Shaw, IEEE Trans. Electron Devices ED-22 (1975) 445. Sensitiser and light at the far face, worked outside this
/// project: the closed form for B = 0 agreed with a Runge-Kutta solution to ten digits, the rest by two methods to six. The triples 0.54, 0.03, 0.014 (436 nm)
/// and 0.86, 0.07, 0.018 (405 nm) are those usually quoted for the resist of 1975, from memory.
/// </summary>
public class DillTests
{
    [Theory]
    [InlineData(0.5, 0.014, 1, 100, 0.3504993361, 0.8620892575)]
    [InlineData(0.86, 0.018, 1.5, 50, 0.7133756043, 0.4829958570)]
    public void Without_lasting_absorption_the_closed_form_holds(double a, double c, double depth, double dose, double sensitiser, double light)
    {
        var coat = new BleachingCoat(a, 0, c);
        Assert.Equal(sensitiser, coat.SensitiserLeft(depth, dose), 1e-9);
        Assert.Equal(light, coat.Transmission(depth, dose), 1e-9);
    }

    [Theory]
    [InlineData(0.54, 0.03, 0.014, 0, 1, 0.565525)]
    [InlineData(0.54, 0.03, 0.014, 25, 0.809082, 0.643952)]
    [InlineData(0.54, 0.03, 0.014, 50, 0.637764, 0.714035)]
    [InlineData(0.54, 0.03, 0.014, 100, 0.371558, 0.822258)]
    [InlineData(0.54, 0.03, 0.014, 200, 0.107625, 0.928266)]
    [InlineData(0.54, 0.03, 0.014, 400, 0.007407, 0.967646)]
    [InlineData(0.86, 0.07, 0.018, 50, 0.640439, 0.593730)]
    [InlineData(0.86, 0.07, 0.018, 200, 0.076811, 0.894433)]
    public void Sensitiser_and_light_one_micrometre_down(double a, double b, double c, double dose, double sensitiser, double light)
    {
        var coat = new BleachingCoat(a, b, c);
        Assert.Equal(sensitiser, coat.SensitiserLeft(1, dose), 2e-6);
        Assert.Equal(light, coat.Transmission(1, dose), 2e-6);
    }

    /// <summary>From the light at 0 and at 0.001 mJ/cm² through 1 µm the rate of bleaching comes back.</summary>
    [Fact]
    public void The_initial_slope_gives_the_rate_back()
    {
        var coat = new BleachingCoat(0.54, 0.03, 0.014);
        var slope = (coat.Transmission(1, 0.001) - coat.Transmission(1, 0)) / 0.001;
        var measured = BleachingCoat.OfMeasured(1, Math.Exp(-0.57), Math.Exp(-0.03), slope);
        Assert.Equal(0.54, measured.BleachablePerUm, 1e-12);
        Assert.Equal(0.03, measured.LastingPerUm, 1e-12);
        Assert.Equal(0.0140000, measured.BleachCm2PerMj, 1e-6);
    }

    /// <summary>Limits: e^−(A+B)d before any light, e^−Bd after very much.</summary>
    [Fact]
    public void After_very_much_light_only_the_lasting_absorption_is_left() =>
        Assert.Equal(Math.Exp(-0.03), new BleachingCoat(0.54, 0.03, 0.014).Transmission(1, 1e7), 1e-6);
}
