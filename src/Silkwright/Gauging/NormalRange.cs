using MathNet.Numerics.Distributions;

namespace Silkwright.Gauging;

/// <summary>How far apart the highest and the lowest of some normal values lie, in standard deviations.</summary>
/// <remarks>Integrals of the distribution of the range: L. H. C. Tippett, Biometrika 17 (1925) 364; H. A. David and H. N. Nagaraja, Order Statistics, ch. 3.</remarks>
internal static class NormalRange
{
    private const double Reach = 8;
    private const int Steps = 400;

    /// <summary>Mean of the range (d₂). [standard deviations]</summary>
    public static double Mean(int values)
    {
        const double step = 2 * Reach / Steps;
        return step * Enumerable.Range(0, Steps + 1).Sum(i =>
        {
            var f = Normal.CDF(0, 1, -Reach + (i * step));
            return 1 - Math.Pow(f, values) - Math.Pow(1 - f, values);
        });
    }

    /// <summary>Root of the mean square of the range: what a single range stands for (d₂* of one group). [standard deviations]</summary>
    public static double RootMeanSquare(int values)
    {
        const double step = 2 * Reach / Steps;
        var f = Enumerable.Range(0, Steps + 1).Select(i => Normal.CDF(0, 1, -Reach + (i * step))).ToArray();
        var sum = 0.0;
        for (var low = 0; low <= Steps; low++)
        {
            for (var high = low; high <= Steps; high++)
                sum += (high == low ? 0.5 : 1) * (1 - Math.Pow(f[high], values) - Math.Pow(1 - f[low], values) + Math.Pow(f[high] - f[low], values));
        }

        return Math.Sqrt(2 * step * step * sum);
    }
}
