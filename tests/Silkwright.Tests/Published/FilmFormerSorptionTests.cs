using Silkwright.Drying;

namespace Silkwright.Tests.Published;

/// <summary>
/// GAB parameters of three film formers, J. Pharm. Sci. 99 (November 2010), table 4, as transcribed in public code; the
/// moistures follow from the definition. They check the equation, not the parameters this project assumes for its coats.
/// </summary>
public class FilmFormerSorptionTests
{
    [Theory]
    [InlineData(6.372, 2.295, 0.821, 2.9836, 6.6488, 13.0378, 21.1482)] // hydroxypropylmethyl cellulose
    [InlineData(3.979, 12.524, 0.770, 3.6912, 5.7380, 8.8980, 12.5181)] // microcrystalline cellulose
    [InlineData(7.400, 15.930, 0.736, 7.0938, 10.5694, 15.7171, 21.2399)] // partly pregelatinised starch
    public void Moisture_follows_the_isotherm(
        double monolayer, double c, double k, double at25, double at50, double at75, double at90)
    {
        var isotherm = new GabIsotherm(monolayer, c, k);
        Assert.Equal(at25, isotherm.MoisturePercent(0.25), 1e-3);
        Assert.Equal(at50, isotherm.MoisturePercent(0.50), 1e-3);
        Assert.Equal(at75, isotherm.MoisturePercent(0.75), 1e-3);
        Assert.Equal(at90, isotherm.MoisturePercent(0.90), 1e-3);
    }
}
