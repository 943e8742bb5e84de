using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace Silkwright.Statistics;

/// <summary>Least squares of one column on several, by an orthogonal (QR) decomposition.</summary>
/// <remarks>
/// Not by normal equations, which square the condition number: Å. Björck, Numerical Methods for Least Squares Problems (1996), ch. 2. Columns are brought to one size
/// first, and the coefficients refined once against the residuals. Held to the certified values of NIST's statistical reference data sets in the tests.
/// </remarks>
public sealed class LinearRegression
{
    /// <summary>A column counts as a combination of the others where less of it than this is left.</summary>
    private const double LeastLeft = 1e-12;

    private LinearRegression(double[] coefficients, double[] standardErrors, double[] residuals, double[] leverages, double residualVariance)
    {
        Coefficients = coefficients;
        StandardErrors = standardErrors;
        Residuals = residuals;
        Leverages = leverages;
        ResidualVariance = residualVariance;
    }

    /// <summary>One a column, in the columns' order.</summary>
    public IReadOnlyList<double> Coefficients { get; }

    public IReadOnlyList<double> StandardErrors { get; }

    /// <summary>Observed less fitted, one a row.</summary>
    public IReadOnlyList<double> Residuals { get; }

    /// <summary>How much of each row's fitted value is its own doing. [1], 0 to 1.</summary>
    public IReadOnlyList<double> Leverages { get; }

    public double ResidualVariance { get; }

    public int Freedom => Residuals.Count - Coefficients.Count;

    /// <param name="response">One a row.</param>
    /// <param name="columns">The columns, a constant one among them where it is wanted.</param>
    /// <exception cref="ArgumentException">Lengths differ, there are no more rows than columns, or a column is a combination of others.</exception>
    public static LinearRegression Of(IReadOnlyList<double> response, IReadOnlyList<IReadOnlyList<double>> columns)
    {
        var (rows, count) = (response.Count, columns.Count);
        if (count == 0 || rows <= count || columns.Any(column => column.Count != rows))
            throw new ArgumentException("A regression needs more rows than columns, and a value a row in each.", nameof(columns));
        var sizes = columns.Select(column => Math.Sqrt(column.Sum(value => value * value))).ToArray();
        if (sizes.Any(size => !(size > 0)))
            throw new ArgumentException("A column is 0 throughout.", nameof(columns));
        var x = Matrix<double>.Build.Dense(rows, count, (i, j) => columns[j][i] / sizes[j]);
        var y = Vector<double>.Build.DenseOfEnumerable(response);
        var qr = x.QR(QRMethod.Thin);
        if (Enumerable.Range(0, count).Any(j => !(Math.Abs(qr.R[j, j]) > LeastLeft)))
            throw new ArgumentException("A column is a combination of others.", nameof(columns));
        var scaled = qr.Solve(y);
        scaled += qr.Solve(y - (x * scaled));
        var residuals = y - (x * scaled);
        var variance = residuals.DotProduct(residuals) / (rows - count);
        var inverse = qr.R.Inverse();
        return new LinearRegression(
            [.. scaled.Select((value, j) => value / sizes[j])],
            [.. Enumerable.Range(0, count).Select(j => Math.Sqrt(variance) * inverse.Row(j).L2Norm() / sizes[j])],
            [.. residuals],
            [.. Enumerable.Range(0, rows).Select(i => qr.Q.Row(i).DotProduct(qr.Q.Row(i)))],
            variance);
    }
}
