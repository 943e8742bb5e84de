namespace Silkwright.Statistics;

/// <summary>The Weibull distribution of a time to failure.</summary>
/// <param name="Shape">Above 1: failures come ever faster with age. [1], above 0.</param>
/// <param name="Scale">Time by which 63.2 % have failed. Above 0, in the unit of time.</param>
/// <remarks>Survival exp(-(t/scale)^shape): docs/engines/life.md, equation 1. Source: Weibull 1951, J. Appl. Mech. 18.</remarks>
public sealed record Weibull(double Shape, double Scale)
{
    /// <summary>The distribution with this shape of which half has failed by <paramref name="median"/>.</summary>
    public static Weibull WithMedian(double shape, double median) => new(shape, median / Math.Pow(Math.Log(2), 1 / shape));

    /// <summary>Share that still works after a time. [1]</summary>
    public double Survival(double time) => time <= 0 ? 1 : Math.Exp(-Math.Pow(time / Scale, Shape));

    /// <summary>Chance of failing at a time, by unit of time.</summary>
    public double Density(double time) => time <= 0 ? 0 : Shape / Scale * Math.Pow(time / Scale, Shape - 1) * Survival(time);

    /// <summary>Mean time to failure.</summary>
    public double Mean => Scale * MathNet.Numerics.SpecialFunctions.Gamma(1 + (1 / Shape));

    /// <summary>Variance of the time to failure.</summary>
    public double Variance =>
        (Scale * Scale * MathNet.Numerics.SpecialFunctions.Gamma(1 + (2 / Shape))) - (Mean * Mean);
}
