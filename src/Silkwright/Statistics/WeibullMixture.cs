namespace Silkwright.Statistics;

/// <summary>Two kinds that cannot be told apart beforehand, each with its own time to failure.</summary>
/// <param name="FirstShare">Share of the first kind. [1], 0 to 1.</param>
/// <param name="First">Time to failure of the first kind.</param>
/// <param name="Second">Time to failure of the second kind.</param>
public sealed record WeibullMixture(double FirstShare, Weibull First, Weibull Second)
{
    /// <summary>Share that still works after a time. [1]</summary>
    public double Survival(double time) => (FirstShare * First.Survival(time)) + ((1 - FirstShare) * Second.Survival(time));

    /// <summary>Mean time to failure.</summary>
    public double Mean => (FirstShare * First.Mean) + ((1 - FirstShare) * Second.Mean);

    /// <summary>Variance of the time to failure.</summary>
    public double Variance =>
        (FirstShare * (First.Variance + (First.Mean * First.Mean)))
        + ((1 - FirstShare) * (Second.Variance + (Second.Mean * Second.Mean)))
        - (Mean * Mean);

    /// <summary>Time by which half have failed.</summary>
    public double Median
    {
        get
        {
            double low = 0, high = Math.Max(First.Scale, Second.Scale) * Math.Pow(Math.Log(2), 1 / Math.Min(First.Shape, Second.Shape));
            while (Survival(high) > 0.5)
                high *= 2;
            for (var i = 0; i < 80; i++)
            {
                var middle = (low + high) / 2;
                if (Survival(middle) > 0.5)
                    low = middle;
                else
                    high = middle;
            }

            return (low + high) / 2;
        }
    }
}
