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
}
