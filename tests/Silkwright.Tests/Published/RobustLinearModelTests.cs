using Silkwright.Exposure;
using Silkwright.Statistics;

namespace Silkwright.Tests.Published;

/// <summary>
/// Robust lines by rlm of MASS 7.3.58.2 in R 4.2.2: <c>h &lt;- rlm(y ~ x, psi = psi.huber, acc = 1e-13, maxit = 2000)</c>, then
/// <c>summary(rlm(y ~ x, psi = psi.bisquare, init = coef(h), acc = 1e-13, maxit = 2000))</c>.
/// </summary>
public class RobustLinearModelTests
{
    /// <summary>Belgian telephone calls in tens of millions by year, MASS::phones: from 1964 to 1969 minutes were counted by mistake.</summary>
    [Fact]
    public void The_telephone_calls_with_six_years_of_another_count()
    {
        double[] calls = [4.4, 4.7, 4.7, 5.9, 6.6, 7.3, 8.1, 8.8, 10.6, 12.0, 13.5, 14.9, 16.1, 21.2, 119, 124, 142, 159, 182, 212, 43, 24, 27, 29];
        var line = RobustLine.Through([.. Enumerable.Range(50, 24).Select(year => (double)year)], calls);
        Assert.Equal(-52.30251068224, line.Intercept, 1e-6);
        Assert.Equal(1.09804648483, line.Slope, 1e-8);
        Assert.Equal(2.7534575266294, line.InterceptStandardError, 1e-6);
        Assert.Equal(0.0444907314159, line.SlopeStandardError, 1e-8);
        Assert.Equal(1.65545571377, line.Scale, 1e-7);
    }

    /// <summary>The invented doses of <see cref="LinearModelTests"/> with the fifth depth misread by 30 µm; x is the logarithm of dose.</summary>
    [Fact]
    public void One_misread_depth_leaves_the_working_curve_where_it_was()
    {
        var fit = WorkingCurveFit.Robust([15, 25, 40, 65, 100, 160, 250], [22.1, 48.9, 72.4, 98.8, 151.6, 146.9, 170.2]);
        Assert.Equal(52.7335884168, fit.Curve.PenetrationDepthUm, 1e-7);
        Assert.Equal(9.92714438169, fit.Curve.CriticalDoseMjPerCm2, 1e-7);
        Assert.Equal(0.28302374402, fit.PenetrationDepthStandardErrorUm, 1e-7);
        Assert.Equal(0, fit.Weights[4]);
        Assert.Equal(0.542870566585, fit.Weights[2], 1e-7);
    }

    /// <summary>Points on a line: nothing is left over, and nothing is divided by it.</summary>
    [Fact]
    public void A_line_without_errors_has_none()
    {
        var line = RobustLine.Through([1, 2, 3, 4], [2, 4, 6, 8]);
        Assert.Equal(2, line.Slope, 1e-12);
        Assert.Equal(0, line.SlopeStandardError, 1e-12);
    }

    /// <summary>
    /// The same doses with no depth misread. Least squares: <c>predict(lm(z ~ log(d)), interval = "confidence", level = 0.9)</c>; robust: coef and vcov of <c>rlm(z ~ log(d), psi = psi.bisquare)</c>
    /// with Student's t on 5 degrees of freedom; R 4.2.2, MASS 7.3.58.2.
    /// </summary>
    [Fact]
    public void The_interval_of_the_curve_is_rs()
    {
        double[] doses = [15, 25, 40, 65, 100, 160, 250], depths = [22.1, 48.9, 72.4, 98.8, 121.6, 146.9, 170.2];
        var least = WorkingCurveFit.Of(doses, depths);
        Assert.Equal((0.2531823, 0, 1.1731747), Rounded(least.DepthUm(10)));
        Assert.Equal((94.7725851, 94.3555687, 95.1896015), Rounded(least.DepthUm(60)));
        Assert.Equal((194.8499956, 193.9257762, 195.7742149), Rounded(least.DepthUm(400)));
        var robust = WorkingCurveFit.Robust(doses, depths).DepthUm(400);
        Assert.Equal(194.8513263, robust.Value, 2e-3);
        Assert.Equal(193.9162089, robust.Low, 2e-3);
        Assert.Equal(195.7864437, robust.High, 2e-3);

        static (double, double, double) Rounded(Silkwright.Estimates.Estimate depth) => (Math.Round(depth.Value, 7), Math.Round(depth.Low, 7), Math.Round(depth.High, 7));
    }
}
