using MathNet.Numerics.Distributions;

namespace Silkwright.Life;

/// <summary>How many spare screens pay.</summary>
/// <remarks>
/// Every failure stops the press: shortly while a spare is left, for a remake after that. docs/engines/life.md, equation 6.
/// </remarks>
public static class Spares
{
    /// <summary>More spares than this are never weighed.</summary>
    public const int Most = 40;

    /// <summary>Numbers of spares told beyond the best, so that one sees the cost rise again.</summary>
    private const int ToldBeyondBest = 3;

    /// <param name="life">The stencil over its run.</param>
    /// <param name="costs">Each 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A cost or a time below 0.</exception>
    public static SparesAdvice Advise(LifeResult life, SpareCosts costs)
    {
        if (!(costs is { SparePerScreen: >= 0, RemakePerScreen: >= 0, StopPerMinute: >= 0, RemakeMinutes: >= 0, SpareMinutes: >= 0 }))
            throw new ArgumentOutOfRangeException(nameof(costs), costs, "Costs and times of a spare must be 0 or more.");
        var chances = life.FailureChances.Count > 0 ? life.FailureChances : PoissonChances(life.ExpectedFailures.Value);
        var all = Enumerable.Range(0, Most + 1).Select(spares => Cost(spares, chances, costs)).ToArray();
        var best = Array.IndexOf(all, all.Min());
        return new SparesAdvice(best, all[best], all[..Math.Min(all.Length, best + 1 + ToldBeyondBest)]);
    }

    private static double Cost(int spares, IReadOnlyList<double> chances, SpareCosts costs)
    {
        var withSpare = costs.StopPerMinute * costs.SpareMinutes;
        var withRemake = costs.RemakePerScreen + (costs.StopPerMinute * costs.RemakeMinutes);
        var expected = spares * costs.SparePerScreen;
        for (var failures = 1; failures < chances.Count; failures++)
        {
            var covered = Math.Min(failures, spares);
            expected += chances[failures] * ((covered * withSpare) + ((failures - covered) * withRemake));
        }

        return expected;
    }

    /// <summary>Counts of rare, unrelated failures: stands in where only their mean is known.</summary>
    private static double[] PoissonChances(double mean)
    {
        if (mean <= 0)
            return [1];
        var most = (int)Math.Ceiling(mean + (8 * Math.Sqrt(mean)) + 8);
        return [.. Enumerable.Range(0, most + 1).Select(n => Poisson.PMF(mean, n))];
    }
}
