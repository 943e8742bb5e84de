using CsCheck;
using Silkwright.Drying;

namespace Silkwright.Tests.Drying;

public class MoistAirTests
{
    private static readonly Gen<(double Celsius, double Humidity)> AnyAir =
        Gen.Select(Gen.Double[0, 60], Gen.Double[0.5, 100]);

    [Theory]
    [InlineData(-0.1, 50, 101325)]
    [InlineData(60.1, 50, 101325)]
    [InlineData(25, -1, 101325)]
    [InlineData(25, 101, 101325)]
    [InlineData(25, 50, 1000)]
    [InlineData(double.NaN, 50, 101325)]
    [InlineData(25, double.NaN, 101325)]
    public void Air_out_of_range_is_refused_with_its_range(double celsius, double humidity, double pascal)
    {
        var fault = Assert.Throws<ArgumentOutOfRangeException>(() => MoistAir.At(celsius, humidity, pascal));
        Assert.Contains("must lie between", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wet_bulb_drier_than_dry_air_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => MoistAir.AtWetBulb(30, 5));

    [Fact]
    public void Air_without_vapour_has_no_dew_point() => Assert.Null(MoistAir.At(25, 0).DewPointCelsius);

    /// <summary>Definition: dew point, wet bulb and dry bulb come in this order and meet in saturated air.</summary>
    [Fact]
    public void Dew_point_wet_bulb_and_dry_bulb_keep_their_order() => AnyAir.Sample(given =>
    {
        var air = MoistAir.At(given.Celsius, given.Humidity);
        return air.DewPointCelsius <= air.WetBulbCelsius + 1e-3 && air.WetBulbCelsius <= given.Celsius + 1e-9;
    });

    [Fact]
    public void Saturated_air_has_all_three_temperatures_alike()
    {
        var air = MoistAir.At(22, 100);
        Assert.Equal(22, air.DewPointCelsius!.Value, 1e-6);
        Assert.Equal(22, air.WetBulbCelsius, 1e-6);
    }

    [Fact]
    public void The_wet_bulb_leads_back_to_the_same_air() => AnyAir.Where(given => given.Celsius > 20).Sample(given =>
    {
        var air = MoistAir.At(given.Celsius, given.Humidity);
        return air.WetBulbCelsius < 0
            || Math.Abs(MoistAir.AtWetBulb(given.Celsius, air.WetBulbCelsius).HumidityPercent - given.Humidity) < 1e-5;
    });
}
