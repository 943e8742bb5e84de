using MathNet.Numerics.Distributions;

namespace Silkwright.Statistics;

/// <summary>How often something fails over a span when each failure is at once replaced by a new one.</summary>
/// <remarks>
/// The renewal process on a grid of time; where failures are many, its normal limit. docs/engines/life.md, equations 4 and 5.
/// Source: Cox, Renewal Theory (1962), chapters 3 and 4 (from memory).
/// </remarks>
public static class Renewals
{
    private const int GridSteps = 200;

    /// <summary>From this many lives in the span on, the normal limit stands in for the grid.</summary>
    private const double ManyLives = 20;

    /// <summary>Chances left out at the far end. [1]</summary>
    private const double Negligible = 1e-9;

    /// <summary>Chance of 0, 1, 2, ... failures within a span; they add to 1.</summary>
    /// <param name="life">Time to failure of each in turn.</param>
    /// <param name="span">0 or more, in the unit of time.</param>
    public static IReadOnlyList<double> CountChances(WeibullMixture life, double span)
    {
        if (span <= 0)
            return [1];
        return span / life.Mean > ManyLives ? NormalLimit(life, span) : OnGrid(life, span);
    }

    /// <summary>Failures expected within a span.</summary>
    /// <param name="life">Time to failure of each in turn.</param>
    /// <param name="span">0 or more, in the unit of time.</param>
    /// <remarks>The renewal equation on the same grid: the mean of <see cref="CountChances"/> without its single chances.</remarks>
    public static double ExpectedCount(WeibullMixture life, double span)
    {
        if (span <= 0)
            return 0;
        if (span / life.Mean > ManyLives)
            return NormalLimit(life, span).Select((chance, n) => n * chance).Sum();
        var failsAt = FailureOnGrid(life, span);
        var expected = new double[failsAt.Length];
        var failedBy = 0.0;
        for (var i = 1; i < expected.Length; i++)
        {
            failedBy += failsAt[i];
            expected[i] = failedBy;
            for (var j = 1; j < i; j++)
                expected[i] += failsAt[j] * expected[i - j];
        }

        return expected[^1];
    }

    private static double[] OnGrid(WeibullMixture life, double span)
    {
        var failsAt = FailureOnGrid(life, span);
        var reached = (double[])failsAt.Clone();
        var chances = new List<double>();
        var atLeast = 1.0;
        while (true)
        {
            var next = reached.Sum();
            chances.Add(Math.Max(0, atLeast - next));
            if (next < Negligible)
                break;
            atLeast = next;
            reached = Convolved(reached, failsAt);
        }

        var total = chances.Sum();
        return [.. chances.Select(chance => chance / total)];
    }

    /// <summary>Failure chances gathered at the nearest grid time, so that the mean life is kept; the first point is time 0.</summary>
    private static double[] FailureOnGrid(WeibullMixture life, double span)
    {
        var step = span / GridSteps;
        var chances = new double[GridSteps + 1];
        for (var i = 0; i < GridSteps; i++)
            chances[i] = life.Survival((i - 0.5) * step) - life.Survival((i + 0.5) * step);
        chances[GridSteps] = life.Survival((GridSteps - 0.5) * step) - life.Survival(span);

        // Nothing fails before it starts: what rounds to time 0 goes to the first step.
        chances[1] += chances[0];
        chances[0] = 0;
        return chances;
    }

    private static double[] Convolved(double[] reached, double[] failsAt)
    {
        var sum = new double[reached.Length];
        for (var i = 1; i < reached.Length; i++)
        {
            if (reached[i] == 0)
                continue;
            for (var j = 1; i + j < sum.Length; j++)
                sum[i + j] += reached[i] * failsAt[j];
        }

        return sum;
    }

    private static double[] NormalLimit(WeibullMixture life, double span)
    {
        var variation = life.Variance / (life.Mean * life.Mean);
        var mean = (span / life.Mean) + ((variation - 1) / 2);
        var deviation = Math.Max(0.1, Math.Sqrt(variation * span / life.Mean));
        var most = (int)Math.Ceiling(mean + (6 * deviation));
        var chances = new double[most + 1];
        for (var n = 0; n <= most; n++)
            chances[n] = Normal.CDF(mean, deviation, n + 0.5) - Normal.CDF(mean, deviation, n - 0.5);
        var total = chances.Sum();
        return [.. chances.Select(chance => chance / total)];
    }
}
