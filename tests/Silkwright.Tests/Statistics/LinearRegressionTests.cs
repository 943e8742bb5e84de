using Silkwright.Statistics;
using Silkwright.Tests.Gauging;

namespace Silkwright.Tests.Statistics;

/// <summary>NIST Statistical Reference Datasets, certified values.</summary>
public sealed class LinearRegressionTests
{
    [Fact]
    public void Norris_comes_out_as_certified()
    {
        double[] x = [0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5, 666.9, 338.0, 447.5, 11.6, 556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1, 118.3, 229.2, 669.1, 448.9, 0.5];
        double[] y = [0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3, 448.9, 10.8, 557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2, 117.6, 228.9, 668.4, 449.2, 0.2];
        var fit = LinearRegression.Of(y, [[.. x.Select(_ => 1.0)], x]);
        Same([-0.262323073774029, 1.00211681802045], fit.Coefficients, 1e-12);
        Same([0.232818234301152, 0.000429796848199937], fit.StandardErrors, 1e-12);
        Assert.Equal(0.884796396144373, Math.Sqrt(fit.ResidualVariance), 1e-12);
    }

    /// <summary>Longley's table is nearly collinear: its condition number is some 10⁴ after scaling and 10⁹ before. Coefficients in the scaling of R's data set.</summary>
    [Fact]
    public void Longley_comes_out_as_certified()
    {
        var columns = StudyReferences.Columns("longley");
        var fit = LinearRegression.Of(columns[^1], [[.. columns[0].Select(_ => 1.0)], .. columns.Take(6)]);
        // Certified to 15 digits: NIST StRD; in thousands here. From memory, and R's lm beside them to 12.
        double[] certified = [-3482.25863459582, 0.0150618722713733, -0.0358191792925910, -0.0202022980381683, -0.0103322686717359, -0.0511041056535807, 1.82915146461355];
        Same(certified, fit.Coefficients, 1e-9);
        Same(StudyReferences.Figures("longley"), fit.Coefficients, 1e-10);
        var errors = StudyReferences.Figures("longley-errors");
        Same(errors[..^1], fit.StandardErrors, 1e-10);
        Assert.Equal(errors[^1], Math.Sqrt(fit.ResidualVariance), 1e-10);
    }

    [Fact]
    public void A_column_that_the_others_make_up_is_refused() =>
        Assert.Throws<ArgumentException>(() => LinearRegression.Of([1, 2, 3, 5], [[1, 1, 1, 1], [1, 1, 0, 0], [0, 0, 1, 1]]));

    private static void Same(double[] expected, IReadOnlyList<double> found, double relative)
    {
        Assert.Equal(expected.Length, found.Count);
        for (var i = 0; i < expected.Length; i++)
            Assert.Equal(expected[i], found[i], relative * Math.Abs(expected[i]));
    }
}
