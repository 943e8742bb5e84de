using Silkwright.Scheduling.Shelf;

namespace Silkwright.Bench;

/// <summary>Shelf cases of any size from a seed.</summary>
internal static class ShelfCases
{
    private const int Seed = 20261125;

    /// <summary>What a screen costs at least, and what it costs more with the worst emulsion. [money/screen]</summary>
    private const double BaseCost = 5;
    private const double CostSpread = 10;

    public static IReadOnlyList<string> Kinds { get; } = ["plane", "trade", "chance"];

    /// <param name="kind">
    /// plane: emulsions and jobs are points of a square, costs grow with their distance, as in most published cases. trade: three traits an
    /// emulsion has and a job asks for, one pair in four impossible. chance: every cost drawn for itself, the hardest for any bound.
    /// </param>
    /// <param name="emulsions">How many.</param>
    /// <param name="jobs">How many.</param>
    public static ShelfCase Of(string kind, int emulsions, int jobs)
    {
        var random = new Random(Seed);
        var traits = kind == "plane" ? 2 : 3;
        var offered = Points(emulsions, traits, random);
        var asked = Points(jobs, traits, random);
        var screens = Enumerable.Range(0, jobs).Select(_ => (double)random.Next(1, 21)).ToArray();
        var fixedCost = screens.Sum() * CostSpread * 0.08 / Math.Sqrt(emulsions);
        var ids = Enumerable.Range(0, emulsions).Select(i => $"E{i}").ToArray();
        return new ShelfCase(
            [.. ids.Select(id => new ShelfEmulsion(id, Math.Round(fixedCost * (0.5 + random.NextDouble()), 2)))],
            [.. screens.Select((count, j) => new ShelfJob($"J{j}", count, Costs(kind, ids, offered, asked[j], random)))]);
    }

    private static double[][] Points(int count, int traits, Random random) =>
        [.. Enumerable.Range(0, count).Select(_ => Enumerable.Range(0, traits).Select(_ => random.NextDouble()).ToArray())];

    private static Dictionary<string, double> Costs(string kind, string[] ids, double[][] offered, double[] asked, Random random)
    {
        var costs = new Dictionary<string, double>(ids.Length);
        for (var i = 0; i < ids.Length; i++)
        {
            var away = Math.Sqrt(offered[i].Zip(asked, (a, b) => (a - b) * (a - b)).Sum() / asked.Length);
            var share = kind switch
            {
                "plane" => away,
                "trade" => (0.8 * away) + (0.2 * random.NextDouble()),
                _ => random.NextDouble(),
            };
            if (kind != "trade" || random.Next(4) > 0 || i == 0)
                costs[ids[i]] = Math.Round(BaseCost + (CostSpread * share), 3);
        }

        return costs;
    }
}
