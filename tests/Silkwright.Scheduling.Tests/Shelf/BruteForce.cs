using Silkwright.Scheduling.Shelf;

namespace Silkwright.Scheduling.Tests.Shelf;

/// <summary>
/// The slow obvious way: every set of emulsions, every way to choose a size of each, every way to put the jobs on it, priced from the case's own words. Shares nothing with the
/// engine.
/// </summary>
internal static class BruteForce
{
    /// <summary>Least monthly cost by set of emulsions (bit i: emulsion i is kept); sets that can't serve or are not used enough are left out.</summary>
    public static Dictionary<int, double> Sets(ShelfCase shelf)
    {
        var sets = new Dictionary<int, double>();
        for (var set = 0; set < 1 << shelf.Emulsions.Count; set++)
        {
            foreach (var sizes in Sizes(shelf))
            {
                if (Cost(shelf, set, sizes) is { } cost)
                    sets[set] = Math.Min(cost, sets.GetValueOrDefault(set, double.PositiveInfinity));
            }
        }

        return sets;
    }

    public static int SetOf(ShelfCase shelf, IReadOnlyList<string> keep) =>
        Enumerable.Range(0, shelf.Emulsions.Count).Where(i => keep.Contains(shelf.Emulsions[i].Id)).Sum(i => 1 << i);

    /// <summary>Every way to choose a size of each.</summary>
    private static IEnumerable<int[]> Sizes(ShelfCase shelf) => shelf.Emulsions.Aggregate(
        (IEnumerable<int[]>)[[]], (begun, emulsion) => begun.SelectMany(sizes => Enumerable.Range(0, Math.Max(1, emulsion.Containers.Count)).Select(k => (int[])[.. sizes, k])));

    /// <summary>Least monthly cost of a set in given sizes (by emulsion; of those without sizes any number); none where it can't serve or is not used enough.</summary>
    public static double? Cost(ShelfCase shelf, int set, IReadOnlyList<int> sizes)
    {
        var cost = 0.0;
        for (var i = 0; i < shelf.Emulsions.Count; i++)
        {
            var (emulsion, kept) = (shelf.Emulsions[i], (set >> i & 1) == 1);
            var size = emulsion.Containers.Count == 0 ? 0 : emulsion.Containers[sizes[i]].FixedCostPerMonth;
            cost += (kept ? emulsion.FixedCostPerMonth + size : 0) + (kept != emulsion.KeptToday ? emulsion.SwitchingCostPerMonth : 0);
        }

        if (shelf.Scenarios.Count == 0)
            return cost + Month(shelf, set, sizes, job => job.ScreensPerMonth);
        var weights = shelf.Scenarios.Sum(scenario => scenario.Weight);
        foreach (var scenario in shelf.Scenarios)
        {
            if (Month(shelf, set, sizes, job => scenario.ScreensPerMonth.TryGetValue(job.Id, out var screens) ? screens : job.ScreensPerMonth) is not { } month)
                return null;
            cost += scenario.Weight / weights * month;
        }

        return cost;
    }

    private static double? Month(ShelfCase shelf, int set, IReadOnlyList<int> sizes, Func<ShelfJob, double> screens)
    {
        var used = new double[shelf.Emulsions.Count];
        return Place(0);

        double? Place(int j)
        {
            if (j == shelf.Jobs.Count)
                return Enumerable.Range(0, used.Length).All(i => (set >> i & 1) == 0 || used[i] >= shelf.Emulsions[i].MinimumScreensPerMonth) ? 0 : null;
            var job = shelf.Jobs[j];
            double? best = null;
            for (var i = 0; i < used.Length; i++)
            {
                var id = shelf.Emulsions[i].Id;
                if ((set >> i & 1) == 0 || !job.Costs.TryGetValue(id, out var cost) || (job.MustStayOn ?? id) != id)
                    continue;
                if (shelf.Emulsions[i] is { Containers: { Count: > 0 } containers } sized)
                    cost += containers[sizes[i]].Price * (job.GramsPerScreen.TryGetValue(id, out var grams) ? grams : sized.GramsPerScreen) / containers[sizes[i]].Grams;
                used[i] += screens(job);
                if (Place(j + 1) is { } rest && (best is null || rest + (cost * screens(job)) < best))
                    best = rest + (cost * screens(job));
                used[i] -= screens(job);
            }

            return best;
        }
    }
}
