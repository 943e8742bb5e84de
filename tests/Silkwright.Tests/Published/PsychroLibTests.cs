using Silkwright.Drying;

namespace Silkwright.Tests.Published;

/// <summary>Moist air at 101 325 Pa as PsychroLib 2.5.0 computes it from temperature and relative humidity.</summary>
public class PsychroLibTests
{
    [Theory]
    [InlineData(18, 80, 0.0103046, 14.5012, 15.8009, 1651.433, 44224.9, 0.83846, 1.20495)]
    [InlineData(20, 50, 0.0072617, 9.2724, 13.7834, 1169.402, 38551.7, 0.84016, 1.19890)]
    [InlineData(25, 50, 0.0098810, 13.8640, 17.8894, 1584.608, 50322.0, 0.85804, 1.17696)]
    [InlineData(25, 90, 0.0180148, 23.2444, 23.7223, 2852.295, 71042.8, 0.86909, 1.17136)]
    [InlineData(30, 30, 0.0079183, 10.5479, 17.9716, 1273.809, 50425.6, 0.86972, 1.15890)]
    [InlineData(35, 20, 0.0069865, 8.7067, 18.8704, 1125.564, 53137.9, 0.88276, 1.14073)]
    [InlineData(35, 60, 0.0214411, 26.0680, 28.1748, 3376.692, 90229.9, 0.90305, 1.13110)]
    [InlineData(40, 10, 0.0045653, 2.6294, 18.5659, 738.346, 51997.5, 0.89363, 1.12414)]
    public void Moist_air_agrees_with_the_library(
        double celsius, double humidity, double ratio, double dewPoint, double wetBulb, double vapourPa, double enthalpyJ,
        double volume, double density)
    {
        var air = MoistAir.At(celsius, humidity);
        Assert.Equal(ratio, air.HumidityRatioGPerKg / 1000, 1e-6);
        Assert.Equal(dewPoint, air.DewPointCelsius!.Value, 0.01);
        Assert.Equal(wetBulb, air.WetBulbCelsius, 0.01);
        Assert.Equal(vapourPa, air.VapourPressurePa, 0.01);
        Assert.Equal(enthalpyJ, air.EnthalpyKjPerKg * 1000, 10.0);
        Assert.Equal(volume, air.SpecificVolumeM3PerKg, 1e-4);
        Assert.Equal(density, air.DensityKgPerM3, 1e-4);
    }

    [Theory]
    [InlineData(5, 872.487)]
    [InlineData(10, 1227.995)]
    [InlineData(20, 2338.804)]
    [InlineData(25, 3169.216)]
    [InlineData(30, 4246.030)]
    [InlineData(40, 7383.460)]
    [InlineData(50, 12349.856)]
    public void Saturation_pressure_agrees_with_the_library(double celsius, double pascal) =>
        Assert.Equal(pascal, MoistAir.SaturationPa(celsius), 0.001);
}
