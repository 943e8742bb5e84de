using Silkwright.Scheduling.Shelf;

namespace Silkwright.Bench;

/// <summary>
/// How far the costs of a case follow from a few traits that an emulsion has and a job asks for: what is left of their spread within each job, as a share
/// of the job's mean, once so many products of a trait and a demand are taken off (least squares by turns, one after another).
/// </summary>
internal static class ShelfTraits
{
    private const int Turns = 100;

    /// <returns>Left after 1, 2, … traits. [%]</returns>
    public static IReadOnlyList<double> LeftPercent(ShelfCase shelf, int traits)
    {
        var rest = shelf.Jobs.Select(job => (Mean: job.Costs.Values.Average(), Job: job))
            .Select(job => shelf.Emulsions.Select(e => job.Job.Costs.TryGetValue(e.Id, out var cost) ? (cost - job.Mean) / job.Mean : double.NaN).ToArray()).ToArray();
        var all = Sum(rest);
        var left = new List<double>();
        for (var trait = 0; trait < traits; trait++)
        {
            var has = shelf.Emulsions.Select((_, i) => 1 + (i % 3)).Select(start => (double)start).ToArray();
            var asks = new double[rest.Length];
            for (var turn = 0; turn < Turns; turn++)
            {
                for (var j = 0; j < asks.Length; j++)
                    asks[j] = Fit(has, i => rest[j][i]);
                for (var i = 0; i < has.Length; i++)
                    has[i] = Fit(asks, j => rest[j][i]);
            }

            for (var j = 0; j < asks.Length; j++)
            {
                for (var i = 0; i < has.Length; i++)
                    rest[j][i] -= asks[j] * has[i];
            }

            left.Add(100 * Sum(rest) / all);
        }

        return left;
    }

    /// <summary>The factor by which amounts come nearest to what is there; pairs that are not there do not count.</summary>
    private static double Fit(double[] by, Func<int, double> there)
    {
        var (product, square) = (0.0, double.Epsilon);
        for (var k = 0; k < by.Length; k++)
        {
            if (double.IsNaN(there(k)))
                continue;
            product += by[k] * there(k);
            square += by[k] * by[k];
        }

        return product / square;
    }

    private static double Sum(double[][] rest) => rest.Sum(row => row.Where(x => !double.IsNaN(x)).Sum(x => x * x));
}
