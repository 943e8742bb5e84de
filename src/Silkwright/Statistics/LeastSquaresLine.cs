namespace Silkwright.Statistics;

/// <summary>Ordinary least squares of a straight line.</summary>
/// <remarks>Residuals of one variance, no error in x. Source: any text on regression; held to NIST certified data in the tests.</remarks>
public sealed record LeastSquaresLine
{
    public required double Intercept { get; init; }

    public required double Slope { get; init; }

    public required double InterceptStandardError { get; init; }

    public required double SlopeStandardError { get; init; }

    /// <summary>Covariance of intercept and slope.</summary>
    public required double Covariance { get; init; }

    /// <summary>Residual standard deviation on n − 2 degrees of freedom.</summary>
    public required double ResidualDeviation { get; init; }

    /// <summary>Share of y's squared spread that the line explains. [1]</summary>
    public required double RSquared { get; init; }

    /// <param name="x">At least three values, not all the same.</param>
    /// <param name="y">As many values.</param>
    /// <exception cref="ArgumentException">Too few points, unequal numbers of them, or all x the same.</exception>
    public static LeastSquaresLine Through(IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        if (x.Count != y.Count || x.Count < 3)
            throw new ArgumentException("A line with errors needs at least three points, each with x and y.", nameof(x));
        var n = x.Count;
        double meanX = x.Average(), meanY = y.Average();
        double sxx = 0, sxy = 0, syy = 0;
        for (var i = 0; i < n; i++)
        {
            sxx += (x[i] - meanX) * (x[i] - meanX);
            sxy += (x[i] - meanX) * (y[i] - meanY);
            syy += (y[i] - meanY) * (y[i] - meanY);
        }

        if (sxx <= 0)
            throw new ArgumentException("A line needs at least two different x.", nameof(x));
        var slope = sxy / sxx;
        var intercept = meanY - (slope * meanX);
        var squares = 0.0;
        for (var i = 0; i < n; i++)
        {
            var residual = y[i] - intercept - (slope * x[i]);
            squares += residual * residual;
        }

        var variance = squares / (n - 2);
        return new LeastSquaresLine
        {
            Intercept = intercept,
            Slope = slope,
            InterceptStandardError = Math.Sqrt(variance * ((1.0 / n) + (meanX * meanX / sxx))),
            SlopeStandardError = Math.Sqrt(variance / sxx),
            Covariance = -variance * meanX / sxx,
            ResidualDeviation = Math.Sqrt(variance),
            RSquared = syy > 0 ? 1 - (squares / syy) : 1,
        };
    }
}
