using MathNet.Numerics.Distributions;
using Silkwright.Estimates;

namespace Silkwright.Stock;

/// <summary>Share of a container thrown away.</summary>
public static class Waste
{
    /// <summary>Of a container hardly touched, some is still used: keeps what is thrown away beside a use finite. [%]</summary>
    private const double MostPercent = 99.9;

    /// <summary>What is thrown away beside what is used, in the same unit: each gram used pays for the grams lost. docs/engines/stock.md, equation 6.</summary>
    /// <param name="used">[g] or money, 0 or more.</param>
    /// <param name="sharePercent">Share of a container thrown away. [%], 0 to 100</param>
    public static double Beside(double used, double sharePercent)
    {
        var percent = Math.Min(sharePercent, MostPercent);
        return used * percent / (100 - percent);
    }

    /// <summary>Share thrown away where use and life fall out in one way.</summary>
    /// <param name="waste">The case.</param>
    /// <param name="share">Share of all ways in which less is thrown away. [1], above 0, below 1</param>
    /// <returns>[%], 0 to below 100.</returns>
    public static double PercentAt(WasteCase waste, double share)
    {
        var (used, spread) = UseOverLife(waste);
        return 100 * Math.Max(0, 1 - (used * Math.Exp(-spread * Normal.InvCDF(0, 1, share))));
    }

    /// <summary>Expected share of a container, mixed whole and used evenly, that is over before it is used up.</summary>
    /// <returns>[%], 0 to below 100.</returns>
    /// <remarks>
    /// docs/engines/stock.md, equations 4 and 5. Use over a life, as a share of the container, is taken as lognormal with the
    /// two inputs' intervals as its middle 90 %; the interval here is the share at that variable's own ends. What clings to the trough
    /// and is washed away counts as use where the coat is reckoned, not here. A day's use that comes in lumps
    /// wastes more than this says.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Container, life or use is not positive.</exception>
    public static Estimate SharePercent(WasteCase waste)
    {
        var (used, spread) = UseOverLife(waste);
        var expected = ExpectedShortfall(used, spread);
        var least = Math.Max(0, 1 - (used * Math.Exp(Estimate.UsualHalfWidth * spread)));
        var most = Math.Max(0, 1 - (used * Math.Exp(-Estimate.UsualHalfWidth * spread)));
        return new Estimate(
            100 * expected,
            100 * Math.Min(least, expected),
            100 * Math.Max(most, expected),
            (Ground)Math.Max((int)Ground.Model, (int)Weakest(waste)));
    }

    /// <summary>Equation 4: median of use over a life as a share of the container, and the standard deviation of its logarithm.</summary>
    private static (double Median, double Spread) UseOverLife(WasteCase waste)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(waste.ContainerGrams, nameof(waste));
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(waste.LifeDays.Value, nameof(waste));
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(waste.GramsPerDay.Value, nameof(waste));
        return (
            waste.GramsPerDay.Value * waste.LifeDays.Value / waste.ContainerGrams,
            Math.Sqrt(Square(LogSpread(waste.LifeDays)) + Square(LogSpread(waste.GramsPerDay))));
    }

    /// <summary>Mean of max(0, 1 − X) where ln X is normal about ln of <paramref name="median"/>: equation 5.</summary>
    private static double ExpectedShortfall(double median, double spread)
    {
        if (spread <= 0)
            return Math.Max(0, 1 - median);
        var reach = -Math.Log(median) / spread;
        var mean = median * Math.Exp(spread * spread / 2);
        return Math.Max(0, Normal.CDF(0, 1, reach) - (mean * Normal.CDF(0, 1, reach - spread)));
    }

    /// <summary>Standard deviation of the logarithm; an end at or below 0 is replaced by the other end's mirror.</summary>
    private static double LogSpread(Estimate input)
    {
        var up = Math.Log(input.High / input.Value);
        var down = input.Low > 0 ? Math.Log(input.Value / input.Low) : up;
        return (up + down) / (2 * Estimate.UsualHalfWidth);
    }

    private static Ground Weakest(WasteCase waste) =>
        waste.LifeDays.Ground > waste.GramsPerDay.Ground ? waste.LifeDays.Ground : waste.GramsPerDay.Ground;

    private static double Square(double x) => x * x;
}
