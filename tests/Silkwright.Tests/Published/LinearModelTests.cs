using Silkwright.Exposure;
using Silkwright.Statistics;

namespace Silkwright.Tests.Published;

/// <summary>Invented doses and depths fitted by lm of R 4.2.2; standard error of the critical dose by the delta method there.</summary>
public class LinearModelTests
{
    [Fact]
    public void A_working_curve_fit_agrees_with_r()
    {
        var fit = WorkingCurveFit.Of([15, 25, 40, 65, 100, 160, 250], [22.1, 48.9, 72.4, 98.8, 121.6, 146.9, 170.2]);
        Assert.Equal(1, fit.Curve.PenetrationDepthUm / 52.75228309, 1e-6);
        Assert.Equal(1, fit.PenetrationDepthStandardErrorUm / 0.2213539, 1e-6);
        Assert.Equal(1, fit.Curve.CriticalDoseMjPerCm2 / 9.952120418, 1e-6);
        Assert.Equal(1, fit.CriticalDoseStandardErrorMjPerCm2 / 0.0863124643, 1e-6);
        var line = LeastSquaresLine.Through([.. new double[] { 15, 25, 40, 65, 100, 160, 250 }.Select(dose => Math.Log(dose))], [22.1, 48.9, 72.4, 98.8, 121.6, 146.9, 170.2]);
        Assert.Equal(1, line.Intercept / -121.2134383, 1e-6);
        Assert.Equal(1, line.InterceptStandardError / 0.9397941, 1e-6);
        Assert.Equal(1, line.ResidualDeviation / 0.5468378, 1e-6);
        Assert.Equal(1, line.RSquared / 0.9999119714, 1e-6);
    }
}
