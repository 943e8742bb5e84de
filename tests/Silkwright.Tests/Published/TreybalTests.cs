using Silkwright.Drying;

namespace Silkwright.Tests.Published;

/// <summary>
/// Treybal, Mass-Transfer Operations, 3rd edition, illustration 12.3 (p. 671): 40 kg of solid a square metre from 25 % to 6 %
/// water of the wet weight, critical moisture 0.2, 0.3 g/(m²·s). The book integrates a measured falling-rate curve, which a
/// straight falling rate is not held to; the constant-rate part is.
/// </summary>
public class TreybalTests
{
    [Fact]
    public void Illustration_12_3_constant_rate_time()
    {
        var periods = new DryingPeriods(SolidKgPerM2: 40, RateKgPerM2S: 0.3e-3, Critical: 0.200, Rest: 0);
        Assert.Equal(1, periods.Seconds(0.25 / 0.75, 0.200) / 17778, 0.005);
    }
}
