using Silkwright.Drying;

namespace Silkwright.Tests.Published;

/// <summary>Incropera and others, Fundamentals of Heat and Mass Transfer, 7th edition.</summary>
public class IncroperaTests
{
    /// <summary>
    /// Problem 7.114: wet plate 0.5 m along the stream and 3 m across, dry air at 300 K and 35 m/s. The manual's answers,
    /// 0.0728 m/s and 2.79 g/s, are recalled from memory; within 1 %.
    /// </summary>
    [Fact]
    public void Problem_7_114_turbulent_air_over_a_wet_plate()
    {
        var transfer = FlatPlate.MassTransferMPerS(35, 0.5, 15.89e-6, 0.26e-4);
        Assert.Equal(1, transfer / 0.0728, 0.01);
        Assert.Equal(1, transfer * 0.5 * 3 * 0.02556 / 2.79e-3, 0.01);
        Assert.Equal(1, FlatPlate.Sherwood(1.1013e6, 0.6112) / 1401, 0.01);
    }

    /// <summary>Laminar correlation of chapter 7, evaluated by hand.</summary>
    [Fact]
    public void Laminar_air_over_a_plate() => Assert.Equal(77.663, FlatPlate.Sherwood(19230.8, 0.60), 1e-3);

    /// <summary>Chilton and Colburn's analogy with the air properties of table A.4 at 300 K.</summary>
    [Fact]
    public void Heat_over_mass_transfer_in_air() => Assert.Equal(1061.70, FlatPlate.HeatOverMass(1.161, 1007, 22.5 / 26), 0.01);
}
