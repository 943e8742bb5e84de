using Silkwright.Drying;

namespace Silkwright.Tests.Published;

/// <summary>
/// WMO-No. 8, Guide to Instruments: its Magnus form (claimed good to 0.35 % here) and its psychrometer formula, evaluated
/// outside this project. The psychrometer formula describes an aspirated instrument, not adiabatic saturation, so that relative
/// humidity agrees only to 0.8 points.
/// </summary>
public class WmoGuideTests
{
    [Theory]
    [InlineData(10, 1226.03)]
    [InlineData(20, 2332.60)]
    [InlineData(25, 3160.06)]
    [InlineData(30, 4233.72)]
    [InlineData(40, 7367.46)]
    [InlineData(50, 12345.16)]
    public void Saturation_pressure_agrees_with_the_magnus_form(double celsius, double pascal) =>
        Assert.Equal(1, MoistAir.SaturationPa(celsius) / pascal, 0.0035);

    [Theory]
    [InlineData(20, 15, 58.57)]
    [InlineData(25, 20, 63.15)]
    [InlineData(30, 20, 39.17)]
    public void Relative_humidity_agrees_with_the_aspirated_psychrometer(double celsius, double wetBulb, double humidityPercent) =>
        Assert.Equal(humidityPercent, MoistAir.AtWetBulb(celsius, wetBulb).HumidityPercent, 0.8);
}
