using System.Numerics;
using MathNet.Numerics.Distributions;

namespace Silkwright.Statistics;

/// <summary>How often something fails over a span when each failure is at once replaced by a new one.</summary>
/// <remarks>
/// The renewal process on a grid of time; where failures are many, its normal limit. docs/engines/life.md, equations 4 and 5.
/// Source: Cox, Renewal Theory (1962), chapters 3 and 4 (from memory).
/// </remarks>
public static class Renewals
{
    /// <summary>Steps of the grid; the work grows with their square.</summary>
    private const int GridSteps = 200;

    /// <summary>From this many lives in the span on, the normal limit stands in for the grid.</summary>
    private const double ManyLives = 20;

    /// <summary>Chances left out at the far end. [1]</summary>
    private const double Negligible = 1e-9;

    /// <summary>Chance of 0, 1, 2, ... failures within a span; they add to 1.</summary>
    /// <param name="life">Time to failure of each in turn.</param>
    /// <param name="span">0 or more, in the unit of time.</param>
    /// <param name="steps">Steps of the grid: with 80 the mean is right to 1 %, with the usual number to 0.2 %.</param>
    public static IReadOnlyList<double> CountChances(WeibullMixture life, double span, int steps = GridSteps)
    {
        if (span <= 0)
            return [1];
        return span / life.Mean > ManyLives ? NormalLimit(life, span) : OnGrid(life, span, steps);
    }

    private static double[] OnGrid(WeibullMixture life, double span, int steps)
    {
        var failsAt = FailureOnGrid(life, span, steps);
        var turned = Turned(failsAt);
        var reached = failsAt;
        var chances = new List<double>();
        var atLeast = 1.0;
        while (true)
        {
            var next = reached.Sum();
            chances.Add(Math.Max(0, atLeast - next));
            if (next < Negligible)
                break;
            atLeast = next;
            reached = Convolved(reached, turned);
        }

        var total = chances.Sum();
        return [.. chances.Select(chance => chance / total)];
    }

    /// <summary>Failure chances gathered at the nearest grid time, so that the mean life is kept; the first point is time 0.</summary>
    private static double[] FailureOnGrid(WeibullMixture life, double span, int steps)
    {
        var step = span / steps;
        var chances = new double[steps + 1];
        var before = life.Survival(-0.5 * step);
        for (var i = 0; i <= steps; i++)
        {
            var after = life.Survival(Math.Min(span, (i + 0.5) * step));
            chances[i] = before - after;
            before = after;
        }

        // Nothing fails before it starts: what rounds to time 0 goes to the first step.
        chances[1] += chances[0];
        chances[0] = 0;
        return chances;
    }

    private static double[] Convolved(double[] reached, double[] turned)
    {
        var sum = new double[reached.Length];
        for (var i = 2; i < sum.Length; i++)
            sum[i] = Dot(reached.AsSpan(1, i - 1), turned.AsSpan(turned.Length - i + 1, i - 1));
        return sum;
    }

    /// <summary>Chances of times 1, 2, ... in falling order of time: the last is that of time 1.</summary>
    private static double[] Turned(double[] failsAt)
    {
        var turned = failsAt[1..];
        turned.AsSpan().Reverse();
        return turned;
    }

    private static double Dot(ReadOnlySpan<double> one, ReadOnlySpan<double> other)
    {
        var sums = Vector<double>.Zero;
        var i = 0;
        for (; i <= one.Length - Vector<double>.Count; i += Vector<double>.Count)
            sums += new Vector<double>(one[i..]) * new Vector<double>(other[i..]);
        var sum = Vector.Sum(sums);
        for (; i < one.Length; i++)
            sum += one[i] * other[i];
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
