using Silkwright.Statistics;

namespace Silkwright.Exposure;

/// <summary>A working curve read from doses and the depths they cured.</summary>
public sealed record WorkingCurveFit
{
    public required WorkingCurve Curve { get; init; }

    /// <summary>Standard error of the penetration depth. [µm]</summary>
    public required double PenetrationDepthStandardErrorUm { get; init; }

    /// <summary>Standard error of the critical dose, by the delta method. [mJ/cm²]</summary>
    public required double CriticalDoseStandardErrorMjPerCm2 { get; init; }

    /// <summary>The straight line of depth on the logarithm of dose behind it. [µm]</summary>
    public required LeastSquaresLine Line { get; init; }

    /// <summary>Least squares of depth on the logarithm of dose: docs/engines/exposure.md, equation 2.</summary>
    /// <param name="dosesMjPerCm2">At least three, above 0, not all the same. [mJ/cm²]</param>
    /// <param name="depthsUm">Cured depth of each. [µm]</param>
    /// <exception cref="ArgumentException">Too few pairs, a dose that is not above 0, or depths that do not grow with dose.</exception>
    public static WorkingCurveFit Of(IReadOnlyList<double> dosesMjPerCm2, IReadOnlyList<double> depthsUm)
    {
        if (dosesMjPerCm2.Any(dose => !(dose > 0)))
            throw new ArgumentException("Every dose must be above 0.", nameof(dosesMjPerCm2));
        var line = LeastSquaresLine.Through([.. dosesMjPerCm2.Select(dose => Math.Log(dose))], depthsUm);
        if (!(line.Slope > 0))
            throw new ArgumentException("The cured depth must grow with dose.", nameof(depthsUm));
        var critical = Math.Exp(-line.Intercept / line.Slope);
        var ratio = line.Intercept / line.Slope;
        var logVariance = (Squared(line.InterceptStandardError) - (2 * ratio * line.Covariance)
            + (Squared(ratio) * Squared(line.SlopeStandardError))) / Squared(line.Slope);
        return new WorkingCurveFit
        {
            Curve = new WorkingCurve(line.Slope, critical),
            PenetrationDepthStandardErrorUm = line.SlopeStandardError,
            CriticalDoseStandardErrorMjPerCm2 = critical * Math.Sqrt(logVariance),
            Line = line,
        };
    }

    private static double Squared(double x) => x * x;
}
