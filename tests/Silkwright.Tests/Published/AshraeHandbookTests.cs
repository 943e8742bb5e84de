using Silkwright.Drying;

namespace Silkwright.Tests.Published;

/// <summary>
/// ASHRAE Handbook of Fundamentals (2017), chapter 1: tables 1 to 3 and example 1, as printed in the test suite of a public
/// psychrometrics library.
/// </summary>
public class AshraeHandbookTests
{
    /// <summary>Table 3, saturation over water. The handbook claims 300 ppm for its fit.</summary>
    [Theory]
    [InlineData(5, 872.6)]
    [InlineData(25, 3169.7)]
    [InlineData(50, 12351.3)]
    public void Saturation_pressure_is_that_of_table_3(double celsius, double pascal) =>
        Assert.Equal(1, MoistAir.SaturationPa(celsius) / pascal, 300e-6);

    /// <summary>Table 2, humidity ratio of saturated air at sea level.</summary>
    [Theory]
    [InlineData(5, 0.005425, 0.005)]
    [InlineData(25, 0.020173, 0.005)]
    [InlineData(50, 0.086863, 0.01)]
    public void Saturated_air_holds_what_table_2_says(double celsius, double ratio, double relative) =>
        Assert.Equal(1, MoistAir.At(celsius, 100).HumidityRatioGPerKg / 1000 / ratio, relative);

    /// <summary>Table 1, standard atmosphere; within 1 Pa.</summary>
    [Theory]
    [InlineData(0, 101325)]
    [InlineData(500, 95461)]
    [InlineData(1000, 89875)]
    public void Pressure_falls_with_height_as_in_table_1(double metres, double pascal) =>
        Assert.Equal(pascal, MoistAir.PressureAtAltitude(metres), 1.0);

    /// <summary>Example 1: 40 °C dry bulb, 20 °C wet bulb. The handbook's answers are read off a chart.</summary>
    [Fact]
    public void Example_1_from_dry_and_wet_bulb()
    {
        var air = MoistAir.AtWetBulb(40, 20);
        Assert.Equal(0.0065, air.HumidityRatioGPerKg / 1000, 1e-4);
        Assert.Equal(7, air.DewPointCelsius!.Value, 0.5);
        Assert.Equal(14, air.HumidityPercent, 1.0);
        Assert.Equal(56.7, air.EnthalpyKjPerKg, 0.1);
        Assert.Equal(1, air.SpecificVolumeM3PerKg / 0.896, 0.01);
    }

    /// <summary>The same suite, 30 °C and 25 °C wet bulb at 500 m.</summary>
    [Fact]
    public void Humidity_ratio_from_the_wet_bulb_at_500_m() =>
        Assert.Equal(1, MoistAir.AtWetBulb(30, 25, 95461).HumidityRatioGPerKg / 19.2281, 3e-4);
}
