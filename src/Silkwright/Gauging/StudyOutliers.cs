using MathNet.Numerics.Distributions;
using Silkwright.Statistics;

namespace Silkwright.Gauging;

/// <summary>Finds readings that do not go with the others.</summary>
/// <remarks>
/// Externally studentised residuals of the additive model of part and operator, the worst held against Student's t with Bonferroni's correction (R. D. Cook and S. Weisberg,
/// Residuals and Influence in Regression (1982), 2.2.2); taken out one by one and counted up to the last that still stands out, so that one does not hide
/// another (B. Rosner, Technometrics 25 (1983) 165).
/// </remarks>
internal static class StudyOutliers
{
    private const double Level = 0.05;

    /// <summary>More would not be outliers but the gauge.</summary>
    private const int Most = 5;

    /// <summary>An additive model needs this many readings beyond its effects for a residual to mean something. Common practice.</summary>
    private const int LeastFreedom = 5;

    public static IReadOnlyList<StudyOutlier> Of(StudyLayout layout)
    {
        var left = Enumerable.Range(0, layout.Readings.Count).ToList();
        var tried = new List<StudyOutlier>();
        var standing = 0;
        while (tried.Count < Math.Min(Most, layout.Readings.Count / 10) && Worst(layout, left) is { } worst)
        {
            tried.Add(worst.Outlier);
            _ = left.Remove(worst.Row);
            if (worst.Outlier.Chance < Level)
                standing = tried.Count;
        }

        return [.. tried.Take(standing)];
    }

    private static (int Row, StudyOutlier Outlier)? Worst(StudyLayout layout, List<int> rows)
    {
        var columns = new List<double[]> { Column(_ => true) };
        columns.AddRange(Others(layout.PartOf));
        columns.AddRange(Others(layout.OperatorOf));
        var freedom = rows.Count - columns.Count - 1;
        if (freedom < LeastFreedom || Fit() is not { } fit || !(fit.ResidualVariance > 0))
            return null;
        var sum = fit.ResidualVariance * fit.Freedom;
        var (worst, most) = (-1, 0.0);
        for (var i = 0; i < rows.Count; i++)
        {
            var free = 1 - fit.Leverages[i];
            if (free < 1e-9)
                continue;
            var own = fit.Residuals[i] * fit.Residuals[i] / free;
            var t = Math.Sqrt(own / Math.Max((sum - own) / freedom, 1e-300));
            if (t > most)
                (worst, most) = (i, t);
        }

        if (worst < 0)
            return null;
        var chance = Math.Min(1, rows.Count * 2 * StudentT.CDF(0, 1, freedom, -most));
        var off = fit.Residuals[worst] / (1 - fit.Leverages[worst]);
        return (rows[worst], new StudyOutlier(layout.Readings[rows[worst]], off, Math.CopySign(most, off), chance));

        double[] Column(Func<int, bool> one) => [.. rows.Select(row => one(row) ? 1.0 : 0)];

        IEnumerable<double[]> Others(int[] levelOf) => rows.Select(row => levelOf[row]).Distinct().Skip(1).Select(level => Column(row => levelOf[row] == level));

        // Parts and operators that no reading ties together leave no one answer.
        LinearRegression? Fit()
        {
            try
            {
                return LinearRegression.Of([.. rows.Select(row => layout.Readings[row].ValueUm)], columns);
            }
            catch (ArgumentException)
            {
                return null;
            }
        }
    }
}
