using Silkwright.Drying;

namespace Silkwright.Tests.Drying;

public class GabIsothermTests
{
    /// <summary>
    /// With K = 1 the equation is that of Brunauer, Emmett and Teller. By hand, monolayer 10: C 8 at 0.1 gives
    /// 10·0.8/(0.9·1.7), C 3 at 0.3 gives 10·0.9/(0.7·1.6).
    /// </summary>
    [Theory]
    [InlineData(8, 0.1, 5.228758)]
    [InlineData(3, 0.3, 8.035714)]
    public void At_k_of_one_it_is_the_bet_isotherm(double c, double activity, double moisture) =>
        Assert.Equal(moisture, new GabIsotherm(10, c, 1).MoisturePercent(activity), 1e-6);

    /// <summary>Invented parameters (monolayer 9.5 %, C 15, K 0.82) evaluated by hand outside the project.</summary>
    [Theory]
    [InlineData(0.10, 5.9259)]
    [InlineData(0.25, 9.4949)]
    [InlineData(0.50, 14.6922)]
    [InlineData(0.75, 23.6868)]
    [InlineData(0.90, 35.4212)]
    public void Moisture_of_the_worked_row(double activity, double moisture) =>
        Assert.Equal(moisture, new GabIsotherm(9.5, 15, 0.82).MoisturePercent(activity), 1e-4);

    [Theory]
    [InlineData(-0.01)]
    [InlineData(1.01)]
    public void An_activity_outside_0_to_1_is_refused(double activity) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new GabIsotherm(4, 3, 0.85).MoisturePercent(activity));
}
