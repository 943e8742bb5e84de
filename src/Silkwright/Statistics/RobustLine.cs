namespace Silkwright.Statistics;

/// <summary>A straight line that a few wild points do not pull away.</summary>
/// <remarks>
/// M-estimate by weights worked over and over. Huber's weights (k = 1.345) lead to the start, Tukey's biweight (c = 4.685) on from there, so that a wild point comes to
/// weigh nothing; the scale is the median of the residuals' sizes over 0.6745, anew each time. Covariance: Huber, Robust Statistics (1981), section 7.6. Held to MASS::rlm of R in the tests.
/// </remarks>
public sealed record RobustLine
{
    /// <summary>Gives 95 % of the efficiency of least squares where the errors are normal. [residuals over scale]</summary>
    private const double HuberTurn = 1.345;
    private const double BiweightEnd = 4.685;

    /// <summary>Median size of a standard normal.</summary>
    private const double NormalMedian = 0.6745;
    private const int MostRounds = 2000;
    private const double Settled = 1e-13;

    public required double Intercept { get; init; }

    public required double Slope { get; init; }

    public required double InterceptStandardError { get; init; }

    public required double SlopeStandardError { get; init; }

    /// <summary>Covariance of intercept and slope.</summary>
    public required double Covariance { get; init; }

    /// <summary>Scale of the residuals.</summary>
    public required double Scale { get; init; }

    /// <summary>What each point counts. [1], 0 to 1.</summary>
    public required IReadOnlyList<double> Weights { get; init; }

    /// <param name="x">At least three values, not all the same.</param>
    /// <param name="y">As many values.</param>
    /// <exception cref="ArgumentException">Too few points, unequal numbers of them, or all x the same.</exception>
    public static RobustLine Through(IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        var plain = LeastSquaresLine.Through(x, y);
        var huber = Settle(x, y, (plain.Intercept, plain.Slope), Huber);
        var (intercept, slope) = Settle(x, y, huber, Biweight);
        var residuals = Residuals(x, y, (intercept, slope));
        var scale = ScaleOf(residuals);
        double[] reduced = [.. residuals.Select(residual => scale > 0 ? residual / scale : 0)];
        double[] weights = [.. reduced.Select(Biweight)];
        var variance = VarianceOf(reduced, weights) * scale * scale;
        var (n, meanX) = (x.Count, x.Average());
        var sxx = x.Sum(at => (at - meanX) * (at - meanX));
        return new RobustLine
        {
            Intercept = intercept,
            Slope = slope,
            InterceptStandardError = Math.Sqrt(variance * ((1.0 / n) + (meanX * meanX / sxx))),
            SlopeStandardError = Math.Sqrt(variance / sxx),
            Covariance = -variance * meanX / sxx,
            Scale = scale,
            Weights = weights,
        };
    }

    private static double Huber(double residual) => Math.Min(1, HuberTurn / Math.Abs(residual));

    private static double Biweight(double residual)
    {
        var rest = Math.Max(0, 1 - (residual * residual / (BiweightEnd * BiweightEnd)));
        return rest * rest;
    }

    /// <summary>Derivative of residual times biweight.</summary>
    private static double BiweightSlope(double residual)
    {
        var share = residual * residual / (BiweightEnd * BiweightEnd);
        return share < 1 ? (1 - share) * (1 - (5 * share)) : 0;
    }

    private static (double Intercept, double Slope) Settle(
        IReadOnlyList<double> x, IReadOnlyList<double> y, (double Intercept, double Slope) line, Func<double, double> weight)
    {
        for (var round = 0; round < MostRounds; round++)
        {
            var residuals = Residuals(x, y, line);
            var scale = ScaleOf(residuals);
            if (scale <= 0)
                return line;
            var next = Weighted(x, y, [.. residuals.Select(residual => weight(residual / scale))]) ?? line;
            var moved = Math.Abs(next.Intercept - line.Intercept) + Math.Abs(next.Slope - line.Slope);
            line = next;
            if (moved <= Settled * (Math.Abs(line.Intercept) + Math.Abs(line.Slope)))
                break;
        }

        return line;
    }

    /// <summary>Weighted least squares; none where the points that count stand over one x.</summary>
    private static (double Intercept, double Slope)? Weighted(IReadOnlyList<double> x, IReadOnlyList<double> y, double[] weights)
    {
        var sum = weights.Sum();
        var (meanX, meanY) = (weights.Select((w, i) => w * x[i]).Sum() / sum, weights.Select((w, i) => w * y[i]).Sum() / sum);
        var sxx = weights.Select((w, i) => w * (x[i] - meanX) * (x[i] - meanX)).Sum();
        if (!(sxx > 0))
            return null;
        var slope = weights.Select((w, i) => w * (x[i] - meanX) * (y[i] - meanY)).Sum() / sxx;
        return (meanY - (slope * meanX), slope);
    }

    private static double[] Residuals(IReadOnlyList<double> x, IReadOnlyList<double> y, (double Intercept, double Slope) line) =>
        [.. x.Select((at, i) => y[i] - line.Intercept - (line.Slope * at))];

    private static double ScaleOf(double[] residuals)
    {
        double[] sizes = [.. residuals.Select(Math.Abs).Order()];
        var half = sizes.Length / 2;
        return (sizes.Length % 2 == 1 ? sizes[half] : (sizes[half - 1] + sizes[half]) / 2) / NormalMedian;
    }

    /// <summary>Variance that stands for the residual variance of least squares, for a scale of 1.</summary>
    private static double VarianceOf(double[] reduced, double[] weights)
    {
        const int coefficients = 2;
        var n = reduced.Length;
        var squares = reduced.Select((residual, i) => residual * weights[i] * residual * weights[i]).Sum() / (n - coefficients);
        double[] slopes = [.. reduced.Select(BiweightSlope)];
        var mean = slopes.Average();
        var spread = slopes.Sum(slope => (slope - mean) * (slope - mean)) / (n - 1);
        var correction = 1 + (coefficients * spread / (n * mean * mean));
        return squares * correction * correction / (mean * mean);
    }
}
