using MathNet.Numerics.Distributions;
using Silkwright.Estimates;
using Silkwright.Statistics;

namespace Silkwright.Exposure;

/// <summary>A working curve read from doses and the depths they cured.</summary>
/// <remarks>Depth on the logarithm of dose: docs/engines/exposure.md, equation 2. Doses in one unit throughout: mJ/cm², or this lamp's seconds or units.</remarks>
public sealed record WorkingCurveFit
{
    public required WorkingCurve Curve { get; init; }

    /// <summary>Standard error of the penetration depth. [µm]</summary>
    public required double PenetrationDepthStandardErrorUm { get; init; }

    /// <summary>Standard error of the critical dose, by the delta method. [mJ/cm²]</summary>
    public required double CriticalDoseStandardErrorMjPerCm2 { get; init; }

    /// <summary>Standard error of the depth at a dose of 1. [µm]</summary>
    public required double InterceptStandardErrorUm { get; init; }

    /// <summary>Covariance of that depth and the penetration depth. [µm²]</summary>
    public required double CovarianceUm2 { get; init; }

    /// <summary>What each pair counted. [1]; all 1 by least squares.</summary>
    public required IReadOnlyList<double> Weights { get; init; }

    /// <summary>Least squares.</summary>
    /// <param name="dosesMjPerCm2">At least three, above 0, not all the same. [mJ/cm²]</param>
    /// <param name="depthsUm">Cured depth of each. [µm]</param>
    /// <exception cref="ArgumentException">Too few pairs, a dose that is not above 0, or depths that do not grow with dose.</exception>
    public static WorkingCurveFit Of(IReadOnlyList<double> dosesMjPerCm2, IReadOnlyList<double> depthsUm)
    {
        var line = LeastSquaresLine.Through(Logarithms(dosesMjPerCm2), depthsUm);
        return Of(line.Intercept, line.Slope, line.InterceptStandardError, line.SlopeStandardError, line.Covariance, [.. depthsUm.Select(_ => 1.0)]);
    }

    /// <summary>Robust regression: a strip that went wrong does not move the curve.</summary>
    /// <inheritdoc cref="Of(IReadOnlyList{double}, IReadOnlyList{double})"/>
    public static WorkingCurveFit Robust(IReadOnlyList<double> dosesMjPerCm2, IReadOnlyList<double> depthsUm)
    {
        var line = RobustLine.Through(Logarithms(dosesMjPerCm2), depthsUm);
        return Of(line.Intercept, line.Slope, line.InterceptStandardError, line.SlopeStandardError, line.Covariance, line.Weights);
    }

    /// <summary>Depth that a dose cures by the curve, with the interval of the curve itself: where other strips of this coat may lie is wider. [µm]; 0 or more.</summary>
    /// <param name="doseMjPerCm2">Above 0, in the unit of the fit. [mJ/cm²]</param>
    public Estimate DepthUm(double doseMjPerCm2)
    {
        var x = Math.Log(doseMjPerCm2);
        var depth = Curve.PenetrationDepthUm * (x - Math.Log(Curve.CriticalDoseMjPerCm2));
        var variance = (InterceptStandardErrorUm * InterceptStandardErrorUm) + (2 * x * CovarianceUm2) + (x * x * PenetrationDepthStandardErrorUm * PenetrationDepthStandardErrorUm);
        var reach = StudentT.InvCDF(0, 1, Weights.Count - 2, 0.95) * Math.Sqrt(Math.Max(0, variance));
        return new Estimate(Math.Max(0, depth), Math.Max(0, depth - reach), Math.Max(0, depth + reach), Ground.MeasuredHere);
    }

    private static double[] Logarithms(IReadOnlyList<double> doses) => doses.All(dose => dose > 0)
        ? [.. doses.Select(dose => Math.Log(dose))]
        : throw new ArgumentException("Every dose must be above 0.", nameof(doses));

    private static WorkingCurveFit Of(double intercept, double slope, double interceptError, double slopeError, double covariance, IReadOnlyList<double> weights)
    {
        if (!(slope > 0))
            throw new ArgumentException("The cured depth must grow with dose.", nameof(slope));
        var ratio = intercept / slope;
        var critical = Math.Exp(-ratio);
        var logVariance = ((interceptError * interceptError) - (2 * ratio * covariance) + (ratio * ratio * slopeError * slopeError)) / (slope * slope);
        return new WorkingCurveFit
        {
            Curve = new WorkingCurve(slope, critical),
            PenetrationDepthStandardErrorUm = slopeError,
            CriticalDoseStandardErrorMjPerCm2 = critical * Math.Sqrt(Math.Max(0, logVariance)),
            InterceptStandardErrorUm = interceptError,
            CovarianceUm2 = covariance,
            Weights = weights,
        };
    }
}
