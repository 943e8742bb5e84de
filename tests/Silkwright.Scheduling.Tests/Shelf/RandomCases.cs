using CsCheck;
using Silkwright.Scheduling.Shelf;

namespace Silkwright.Scheduling.Tests.Shelf;

/// <summary>Small cases with every rule a case can have, for comparing with the slow obvious way.</summary>
internal static class RandomCases
{
    /// <summary>1 to 5 emulsions, 1 to 6 jobs; each rule on in some cases, off in others. Whole numbers, so that ties and equal jobs happen.</summary>
    public static Gen<ShelfCase> Small { get; } =
        from emulsions in Gen.Int[1, 5]
        from jobs in Gen.Int[1, 6]
        from withMinimums in Gen.Int[0, 3]
        from withToday in Gen.Int[0, 1]
        from withScenarios in Gen.Int[0, 2]
        from shelf in Of(emulsions, jobs, withMinimums == 0, withToday == 0, withScenarios == 0)
        select shelf;

    /// <summary>The same with 0 to 3 sizes of each emulsion, and grams by emulsion or by job.</summary>
    public static Gen<ShelfCase> Sized { get; } =
        from shelf in Small
        from sizes in Gen.Select(Gen.Int[1, 9], Gen.Int[0, 20], Gen.Int[0, 15]).Array[0, 3].Array[shelf.Emulsions.Count]
        from grams in Gen.Int[0, 4].Array[shelf.Emulsions.Count]
        from own in Gen.Int[-4, 6].Array[shelf.Emulsions.Count].Array[shelf.Jobs.Count]
        select shelf with
        {
            Emulsions = [.. shelf.Emulsions.Select((emulsion, i) => emulsion with
            {
                GramsPerScreen = grams[i] + 1,
                Containers = [.. sizes[i].DistinctBy(size => size.Item1).Select(size => new ShelfContainer(size.Item1, size.Item2) { FixedCostPerMonth = size.Item3 })],
            })],
            Jobs = [.. shelf.Jobs.Select((job, j) => job with { GramsPerScreen = own[j].Select((x, i) => (x, i)).Where(x => x.x >= 0).ToDictionary(x => Emulsion(x.i), x => (double)x.x) })],
        };

    private static Gen<ShelfCase> Of(int emulsions, int jobs, bool minimums, bool today, bool scenarios) =>
        from e in Gen.Select(Gen.Int[0, 60], Gen.Int[0, 12], Gen.Bool, Gen.Int[0, 40]).Array[emulsions]
        from j in Gen.Select(Gen.Int[0, 8], Gen.Int[-1, 9].Array[emulsions], Gen.Int[-2 * emulsions, emulsions - 1]).Array[jobs]
        from most in Gen.Int[0, emulsions]
        from months in Gen.Select(Gen.Int[1, 4], Gen.Int[-3, 8].Array[jobs]).Array[scenarios ? 2 : 0]
        select new ShelfCase(
            [.. e.Select((x, i) => new ShelfEmulsion(Emulsion(i), x.Item1)
            {
                MinimumScreensPerMonth = minimums ? x.Item2 : 0,
                KeptToday = today && x.Item3,
                SwitchingCostPerMonth = today ? x.Item4 : 0,
            })],
            [.. j.Select((x, k) => Job(k, x.Item1, x.Item2, x.Item3))])
        {
            Most = most == 0 ? null : most,
            Scenarios = [.. months.Select((x, s) => new ShelfScenario(
                $"month {s}", x.Item1, x.Item2.Select((screens, k) => (screens, k)).Where(y => y.screens >= 0).ToDictionary(y => $"job {y.k}", y => (double)y.screens)))],
        };

    private static ShelfJob Job(int index, int screens, int[] costs, int stays)
    {
        var served = costs.Select((cost, i) => (cost, i)).Where(x => x.cost >= 0).ToDictionary(x => Emulsion(x.i), x => (double)x.cost);
        return new ShelfJob($"job {index}", screens, served) { MustStayOn = stays >= 0 && served.ContainsKey(Emulsion(stays)) ? Emulsion(stays) : null };
    }

    private static string Emulsion(int index) => ((char)('A' + index)).ToString();
}
