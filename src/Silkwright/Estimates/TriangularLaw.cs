namespace Silkwright.Estimates;

/// <summary>The law an estimate is drawn from where many possible worlds are looked at: a triangle over its interval with its top at the value.</summary>
public static class TriangularLaw
{
    /// <summary>The amount below which a share of all draws lies.</summary>
    /// <param name="estimate">Over whose interval.</param>
    /// <param name="share">[1], 0 to 1</param>
    public static double At(Estimate estimate, double share)
    {
        var (low, top, high) = (estimate.Low, estimate.Value, estimate.High);
        if (high <= low)
            return top;
        return share < (top - low) / (high - low)
            ? low + Math.Sqrt(share * (high - low) * (top - low))
            : high - Math.Sqrt((1 - share) * (high - low) * (high - top));
    }

    /// <summary>Mean of the law.</summary>
    public static double Mean(Estimate estimate) =>
        Math.Clamp((estimate.Low + estimate.Value + estimate.High) / 3, estimate.Low, estimate.High);

    /// <summary>The law within an interval whose mean is the estimate's value: for amounts that are means already.</summary>
    /// <remarks>Where even a top at the lower end leaves the mean too high, the upper end comes in.</remarks>
    public static Estimate AroundMean(Estimate mean)
    {
        var top = Math.Clamp((3 * mean.Value) - mean.Low - mean.High, mean.Low, mean.High);
        var high = Math.Clamp((3 * mean.Value) - mean.Low - top, top, mean.High);
        return new Estimate(top, mean.Low, high, mean.Ground, mean.CoverPercent);
    }
}
