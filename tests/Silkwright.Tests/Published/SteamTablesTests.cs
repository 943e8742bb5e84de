using Silkwright.Drying;

namespace Silkwright.Tests.Published;

/// <summary>
/// Saturation pressure of water by IAPWS-IF97, region 4: values computed outside this project from the published coefficients,
/// which reproduce the verification points of the release's table 35. An equation of another kind than ours, so agreement is
/// asked only to the 300 ppm that ours claims.
/// </summary>
public class SteamTablesTests
{
    [Theory]
    [InlineData(10, 1228.184)]
    [InlineData(20, 2339.215)]
    [InlineData(25, 3169.747)]
    [InlineData(30, 4246.688)]
    [InlineData(40, 7384.427)]
    [InlineData(50, 12351.270)]
    public void Saturation_pressure_agrees_with_the_steam_tables(double celsius, double pascal) =>
        Assert.Equal(1, MoistAir.SaturationPa(celsius) / pascal, 300e-6);
}
