using Silkwright.Exposure;

namespace Silkwright.Tests.Published;

/// <summary>
/// Colombo and others 2025, on the limits of the Beer-Lambert law in ceramic stereolithography, abstract: one slurry, three
/// pairs of parameters for three ways of giving the dose. Depths and doses follow from the definition.
/// </summary>
public class ColomboTests
{
    [Theory]
    [InlineData(76.2, 14.3, 148.20, 201.02, 197.34)]
    [InlineData(113.1, 55.0, 67.62, 146.01, 322.36)]
    [InlineData(85.9, 23.3, 125.13, 184.67, 239.07)]
    public void Depths_and_doses_of_the_slurry(double penetration, double critical, double at100, double at200, double doseFor200)
    {
        var curve = new WorkingCurve(penetration, critical);
        Assert.Equal(at100, curve.DepthUm(100), 0.01);
        Assert.Equal(at200, curve.DepthUm(200), 0.01);
        Assert.Equal(doseFor200, curve.DoseMjPerCm2(200), 0.01);
    }
}
