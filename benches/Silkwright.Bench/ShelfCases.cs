using Silkwright.Scheduling.Shelf;

namespace Silkwright.Bench;

/// <summary>Shelf cases of any size from a seed.</summary>
internal static class ShelfCases
{
    private const int Seed = 20261125;

    /// <summary>What a screen costs at least, and what it costs more with the worst emulsion. [money/screen]</summary>
    private const double BaseCost = 5;
    private const double CostSpread = 10;

    /// <summary>Inks, and how many emulsions of a hundred stand up to one.</summary>
    private const int Inks = 5;
    private const int ResistPercent = 66;

    /// <summary>How costs come about, from the one most like a shop's to the hardest.</summary>
    public static IReadOnlyList<string> Kinds { get; } = ["trade", "plane", "mixed", "chance"];

    /// <param name="kind">
    /// trade: as the engines' costs are made (<see cref="ShelfTraits"/> holds them against each other): hands by emulsion, risk by run and by what the ink
    /// does to it, a third of the pairs ruled out by the ink. plane: emulsions and jobs are points of a square, costs grow with
    /// their distance, as in most published cases. mixed: distance in three traits, a fifth of the spread by chance. chance: every cost drawn for
    /// itself, the hardest for any bound.
    /// </param>
    /// <param name="emulsions">How many.</param>
    /// <param name="jobs">How many.</param>
    public static ShelfCase Of(string kind, int emulsions, int jobs)
    {
        var random = new Random(Seed);
        var traits = kind == "plane" ? 2 : 3;
        var offered = Points(emulsions, traits, random);
        var asked = Points(jobs, traits, random);
        var wear = Points(emulsions, Inks, new Random(Seed + 1));
        var screens = Enumerable.Range(0, jobs).Select(_ => (double)random.Next(1, 21)).ToArray();
        var fixedCost = screens.Sum() * CostSpread * (kind == "trade" ? 0.01 : 0.08) / Math.Sqrt(emulsions);
        var ids = Enumerable.Range(0, emulsions).Select(i => $"E{i}").ToArray();
        return new ShelfCase(
            [.. ids.Select(id => new ShelfEmulsion(id, Math.Round(fixedCost * (0.5 + random.NextDouble()), 2)))],
            [.. screens.Select((count, j) => new ShelfJob(
                $"J{j}", count, kind == "trade" ? TradeCosts(ids, offered, wear, asked[j], random) : Costs(kind, ids, offered, asked[j], random)))]);
    }

    private static double[][] Points(int count, int traits, Random random) =>
        [.. Enumerable.Range(0, count).Select(_ => Enumerable.Range(0, traits).Select(_ => random.NextDouble()).ToArray())];

    /// <summary>Hands and material of the emulsion, by the size of the job; and the risk of a run, by how much its ink wears that emulsion.</summary>
    private static Dictionary<string, double> TradeCosts(string[] ids, double[][] offered, double[][] wear, double[] asked, Random random)
    {
        var costs = new Dictionary<string, double>(ids.Length);
        var (size, run, ink) = (0.7 + (0.6 * asked[0]), asked[1] * asked[1], (int)(Inks * asked[2]));
        for (var i = 0; i < ids.Length; i++)
        {
            var share = (0.45 * size * offered[i][0]) + (0.9 * run * wear[i][ink]) + (0.1 * random.NextDouble());
            // One that stands up to every ink keeps each job makeable.
            if (100 * wear[i][ink] < ResistPercent || i == 0)
                costs[ids[i]] = Math.Round(BaseCost + (CostSpread * share), 3);
        }

        return costs;
    }

    private static Dictionary<string, double> Costs(string kind, string[] ids, double[][] offered, double[] asked, Random random)
    {
        var costs = new Dictionary<string, double>(ids.Length);
        for (var i = 0; i < ids.Length; i++)
        {
            var away = Math.Sqrt(offered[i].Zip(asked, (a, b) => (a - b) * (a - b)).Sum() / asked.Length);
            var share = kind switch
            {
                "plane" => away,
                "mixed" => (0.8 * away) + (0.2 * random.NextDouble()),
                _ => random.NextDouble(),
            };
            if (kind != "mixed" || random.Next(4) > 0 || i == 0)
                costs[ids[i]] = Math.Round(BaseCost + (CostSpread * share), 3);
        }

        return costs;
    }
}
