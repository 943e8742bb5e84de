using Silkwright.Exposure;

namespace Silkwright.Tests.Exposure;

public class WorkingCurveTests
{
    /// <summary>Jacobs 1992: doubling the dose deepens the cure by Dp·ln 2, whatever the dose.</summary>
    [Theory]
    [InlineData(30)]
    [InlineData(500)]
    public void Doubling_the_dose_cures_one_ln2_of_the_penetration_depth_deeper(double dose)
    {
        var curve = new WorkingCurve(100, 10);
        Assert.Equal(69.3147, curve.DepthUm(2 * dose) - curve.DepthUm(dose), 1e-4);
    }

    [Fact]
    public void Below_the_critical_dose_nothing_cures() => Assert.Equal(0, new WorkingCurve(100, 10).DepthUm(9.99));

    [Fact]
    public void A_fit_needs_three_doses_above_nothing_and_depths_that_grow()
    {
        Assert.Throws<ArgumentException>(() => WorkingCurveFit.Of([10, 20], [1, 2]));
        Assert.Throws<ArgumentException>(() => WorkingCurveFit.Of([10, 10, 10], [1, 2, 3]));
        Assert.Throws<ArgumentException>(() => WorkingCurveFit.Of([0, 10, 20], [1, 2, 3]));
        Assert.Throws<ArgumentException>(() => WorkingCurveFit.Of([10, 20, 40], [3, 2, 1]));
    }
}
