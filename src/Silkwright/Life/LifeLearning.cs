using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Statistics;
using Normal = MathNet.Numerics.Distributions.Normal;

namespace Silkwright.Life;

/// <summary>Draws stencil lives towards the stencils that a shop has counted, broken ones and those taken off sound alike.</summary>
/// <remarks>
/// The logarithm of the life beside the rule of thumb is a shop's own share, the same for all it makes, and an emulsion's own in an ink;
/// the share of unseen faults is the shop's. Exact Bayes on a grid: docs/engines/life.md, equations 7 to 9.
/// </remarks>
public sealed class LifeLearning
{
    /// <summary>Part of the rule of thumb's variance that all stencils of a shop share: its presses, mesh and hands. Our own judgement. [1]</summary>
    private const double SharedPart = 0.4;

    private static readonly double Shared = Math.Sqrt(SharedPart);
    private static readonly double Own = Math.Sqrt(1 - SharedPart);

    /// <summary>Life in standard deviations of the rule of thumb, and the part of it that the shop shares.</summary>
    private static readonly double[] Lives = Steps(4.5, 61);
    private static readonly double[] Shops = Steps(4, 33);

    private static readonly (double Share, double LogWeight)[] Faults = FaultShares();

    /// <summary>ln of the weight of a life (second) where the shop's part is known (first).</summary>
    private static readonly double[][] LifeInShop = [.. Shops.Select(shop => LogShares(Lives, life => (life - (Shared * shop)) / Own))];

    private readonly Dictionary<(string Emulsion, InkKind Ink), Group> groups;
    private readonly double[][] shopWeight;

    /// <param name="counted">The shop's counted stencils; with none the rule of thumb stands as it is.</param>
    /// <exception cref="ArgumentOutOfRangeException">A stencil was counted to less than one impression.</exception>
    public LifeLearning(IReadOnlyCollection<CountedStencil> counted)
    {
        if (counted.FirstOrDefault(stencil => stencil.Made.Impressions < 1) is { } none)
            throw new ArgumentOutOfRangeException(nameof(counted), none.Made.Impressions, "A counted stencil has made at least one impression.");
        Counted = counted.Count;
        groups = counted.GroupBy(stencil => Key(stencil.EmulsionId, stencil.Made.Ink)).ToDictionary(group => group.Key, group => new Group([.. group]));
        var prior = LogShares(Shops, shop => shop);
        shopWeight = [.. Faults.Select((fault, f) => Shops.Select((_, s) => fault.LogWeight + prior[s] + groups.Values.Sum(group => group.InShop[f][s])).ToArray())];
    }

    /// <summary>Stencils counted, of all kinds.</summary>
    public int Counted { get; }

    /// <summary>What the counted stencils say of a stencil; none where nothing was counted.</summary>
    /// <param name="emulsionId">Its emulsion.</param>
    /// <param name="asked">The stencil.</param>
    public LearntLife? For(string emulsionId, LifeCase asked)
    {
        if (Counted == 0)
            return null;
        var own = groups.GetValueOrDefault(Key(emulsionId, asked.Ink));
        var life = new double[Lives.Length];
        var fault = new double[Faults.Length];
        var top = shopWeight.Max(row => row.Max());
        for (var f = 0; f < Faults.Length; f++)
        {
            for (var s = 0; s < Shops.Length; s++)
            {
                // The group's own part is taken out and put back life by life.
                var others = shopWeight[f][s] - (own?.InShop[f][s] ?? 0);
                for (var t = 0; t < Lives.Length; t++)
                {
                    var weight = Math.Exp(others + LifeInShop[s][t] + (own?.Likelihood[f][t] ?? 0) - top);
                    life[t] += weight;
                    fault[f] += weight;
                }
            }
        }

        var spread = Spread(LifeSeed.Median(asked));
        var ground = own is null ? Ground.CommonPractice : Ground.MeasuredHere;
        return new LearntLife(
            Summary(Lives, life, ground).Map(t => Math.Exp(spread * t)),
            Summary([.. Faults.Select(share => Math.Log(share.Share))], fault, Ground.MeasuredHere).Map(Math.Exp),
            own?.Counted ?? 0,
            own?.Broke ?? 0,
            Counted - (own?.Counted ?? 0));
    }

    /// <summary>Standard deviation of ln life that a range of the trade stands for.</summary>
    private static double Spread(Estimate median) => Math.Log(median.High / median.Low) / (2 * Normal.InvCDF(0, 1, 0.95));

    /// <summary>Mean and 5 and 95 % points of weights on an even grid.</summary>
    private static Estimate Summary(double[] grid, double[] weights, Ground ground)
    {
        var total = weights.Sum();
        var mean = grid.Zip(weights, (at, weight) => at * weight).Sum() / total;
        return new Estimate(mean, Math.Min(mean, Reached(0.05)), Math.Max(mean, Reached(0.95)), ground);

        double Reached(double share)
        {
            var (sum, i) = (0.0, 0);
            while (i < weights.Length - 1 && sum + weights[i] < share * total)
                sum += weights[i++];
            var step = grid[1] - grid[0];
            return grid[i] - (step / 2) + (weights[i] > 0 ? step * Math.Min(1, ((share * total) - sum) / weights[i]) : 0);
        }
    }

    /// <summary>The unseen share's range is taken as the middle 90 % of a log-normal law.</summary>
    private static (double Share, double LogWeight)[] FaultShares()
    {
        var usual = StencilLife.UnseenFault;
        var middle = Math.Log(usual.Low * usual.High) / 2;
        // A shop whose stencils all break within hundreds must find itself there: up to nearly every one.
        double[] grid = [.. Enumerable.Range(0, 23).Select(i => -2.4 + (2.4 / 7 * i))];
        return [.. grid.Zip(LogShares(grid, z => z), (z, weight) => (Math.Exp(middle + (Spread(usual) * z)), weight))];
    }

    private static double[] Steps(double end, int count) => [.. Enumerable.Range(0, count).Select(i => end * ((2.0 * i / (count - 1)) - 1))];

    /// <summary>ln of standard normal weights that add to 1.</summary>
    private static double[] LogShares(double[] grid, Func<double, double> standard)
    {
        double[] log = [.. grid.Select(at => -0.5 * standard(at) * standard(at))];
        var sum = LogSum(log);
        return [.. log.Select(weight => weight - sum)];
    }

    private static double LogSum(double[] logs)
    {
        var top = logs.Max();
        return top + Math.Log(logs.Sum(log => Math.Exp(log - top)));
    }

    private static (string Emulsion, InkKind Ink) Key(string emulsionId, InkKind ink) => (emulsionId.ToUpperInvariant(), ink);

    /// <summary>Counted stencils of one emulsion in one ink.</summary>
    private sealed class Group
    {
        public Group(CountedStencil[] counted)
        {
            Counted = counted.Length;
            Broke = counted.Count(stencil => stencil.Broke);
            Likelihood = [.. Faults.Select(_ => new double[Lives.Length])];
            foreach (var stencil in counted)
                Add(stencil);
            InShop = [.. Likelihood.Select(row => Shops.Select((_, s) => LogSum([.. row.Zip(LifeInShop[s], (likely, share) => likely + share)])).ToArray())];
        }

        public int Counted { get; }

        public int Broke { get; }

        /// <summary>ln likelihood by share of unseen faults, then by life.</summary>
        public double[][] Likelihood { get; }

        /// <summary>The same by share of unseen faults, then by the shop's part, over all lives.</summary>
        public double[][] InShop { get; }

        private void Add(CountedStencil stencil)
        {
            var seed = LifeSeed.Median(stencil.Made);
            var usual = StencilLife.EomFactor(stencil.Made.EomUm.Value) * seed.Value;
            for (var t = 0; t < Lives.Length; t++)
            {
                var (sound, early) = StencilLife.Kinds(usual * Math.Exp(Spread(seed) * Lives[t]));
                var (ofSound, ofEarly) = (Chance(sound), Chance(early));
                for (var f = 0; f < Faults.Length; f++)
                {
                    var share = stencil.Made.WellCured * (1 - Faults[f].Share);
                    Likelihood[f][t] += Math.Log((share * ofSound) + ((1 - share) * ofEarly));
                }
            }

            double Chance(Weibull life) => Math.Max(
                double.Epsilon, stencil.Broke ? life.Density(stencil.Made.Impressions) : life.Survival(stencil.Made.Impressions));
        }
    }
}
