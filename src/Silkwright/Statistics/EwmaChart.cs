namespace Silkwright.Statistics;

/// <summary>A control chart of exponentially weighted averages: it sees small lasting shifts early.</summary>
/// <remarks>
/// z = λx + (1 − λ)z from the centre on; limits L·σ·√(λ/(2 − λ)·(1 − (1 − λ)^2i)) either side: Roberts 1959; NIST/SEMATECH e-Handbook 6.3.2.4. With λ 0.25 and L 2.998
/// a process that stays as it is gives one false alarm in about 500 values, and a shift of one deviation is seen after about 11: Lucas and Saccucci, Technometrics 32 (1990) 1.
/// </remarks>
public static class EwmaChart
{
    public const double UsualWeight = 0.25;

    public const double UsualLimit = 2.998;

    /// <param name="values">In the order they were read.</param>
    /// <param name="centre">Where they should lie.</param>
    /// <param name="deviation">Standard deviation of one value.</param>
    /// <param name="weight">λ: what the newest value counts. [1], above 0, at most 1.</param>
    /// <param name="limit">L. [deviations]</param>
    /// <param name="centreError">Standard error of the centre, where it was estimated: the limits widen by what it adds.</param>
    public static IReadOnlyList<EwmaPoint> Of(
        IReadOnlyList<double> values, double centre, double deviation, double weight = UsualWeight, double limit = UsualLimit, double centreError = 0)
    {
        var points = new List<EwmaPoint>(values.Count);
        var average = centre;
        for (var i = 1; i <= values.Count; i++)
        {
            average = (weight * values[i - 1]) + ((1 - weight) * average);
            var kept = Math.Pow(1 - weight, i);
            var ofValues = deviation * deviation * weight / (2 - weight) * (1 - (kept * kept));
            var ofCentre = centreError * centreError * (1 - kept) * (1 - kept);
            var half = limit * Math.Sqrt(ofValues + ofCentre);
            points.Add(new EwmaPoint(average, centre - half, centre + half));
        }

        return points;
    }
}
