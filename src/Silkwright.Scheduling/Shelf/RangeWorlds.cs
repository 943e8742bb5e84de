using Silkwright.Estimates;

namespace Silkwright.Scheduling.Shelf;

/// <summary>
/// The worlds of a case whose costs are given with intervals. One emulsion's costs rise and fall together, different emulsions' each by
/// themselves: the case does not say more. docs/engines/shelf.md, section Doubt.
/// </summary>
internal sealed class RangeWorlds : IShelfWorlds
{
    private const int Worlds = 1000;
    private const int Seed = 3;

    private readonly Dictionary<string, (double[] Screens, double[] Keeping)> luck;

    private RangeWorlds(ShelfCase shelf, Ground ground)
    {
        Ground = ground;
        var random = new Random(Seed);
        luck = shelf.Emulsions.ToDictionary(emulsion => emulsion.Id, _ => (Draw(), Draw()));

        double[] Draw() => [.. Enumerable.Range(0, Worlds).Select(_ => random.NextDouble())];
    }

    public int Count => Worlds;

    public Ground Ground { get; }

    /// <returns>None where the case gives single figures only.</returns>
    public static RangeWorlds? Of(ShelfCase shelf)
    {
        var ranges = shelf.Jobs.SelectMany(job => job.CostRanges.Values).Concat(shelf.Emulsions.Select(emulsion => emulsion.FixedCostRange).OfType<Estimate>());
        Ground? weakest = null;
        foreach (var range in ranges)
            weakest = weakest is { } ground && ground >= range.Ground ? ground : range.Ground;
        return weakest is { } found ? new RangeWorlds(shelf, found) : null;
    }

    public double Keeping(ShelfStand stand, int world) => stand.Emulsion.FixedCostRange is { } range
        ? stand.FixedCostPerMonth - range.Value + TriangularLaw.At(range, luck[stand.Emulsion.Id].Keeping[world])
        : stand.FixedCostPerMonth;

    public double PerScreen(ShelfJob job, ShelfStand stand, int world) => job.CostRanges.TryGetValue(stand.Emulsion.Id, out var range)
        ? stand.CostOf(job)!.Value - range.Value + TriangularLaw.At(range, luck[stand.Emulsion.Id].Screens[world])
        : stand.CostOf(job)!.Value;
}
