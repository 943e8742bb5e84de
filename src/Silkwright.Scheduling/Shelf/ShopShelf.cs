using Silkwright.Answers;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Plans;

namespace Silkwright.Scheduling.Shelf;

/// <summary>The few emulsions a shop should keep for the jobs it makes: every cost from the engines. docs/engines/shelf.md, "From a shop".</summary>
/// <remarks>
/// What is thrown away of an emulsion depends on all that is made with it, so the choice is made again with the waste that its own
/// jobs leave, until the shelf stays the same; of the shelves met on the way the cheapest is told.
/// </remarks>
public static class ShopShelf
{
    /// <summary>Rounds after which shelves only repeat each other.</summary>
    private const int MostRounds = 8;

    private static readonly Note KeepingNote = new(
        "Keeping an emulsion is taken to cost an hour a month, for its step test, control strips and practice.", Ground.CommonPractice);

    private static readonly Note WasteNote = new(
        "What is thrown away is worked out from the jobs each emulsion would get, and the shelf chosen again with it until it stays the same; the proof holds for that waste.",
        Ground.Model);

    private static readonly Note DoubtNote = new(
        "Intervals hold nine of ten possible worlds, drawn from the engines' intervals: labour and press stops fall out alike for every shelf, the rest for each emulsion by itself and alike for all its jobs.",
        Ground.Model);

    private static readonly Note TryingNote = new(
        "Taking on an emulsion that is new to the shop is taken to cost six hours of tests and trials, spread over a year.", Ground.CommonPractice);

    /// <summary>Chooses the shelf.</summary>
    /// <param name="work">The month's jobs.</param>
    /// <param name="shop">The shop with its emulsions, and with those weighed beside them.</param>
    /// <param name="most">The most emulsions to keep; none: as many as pay.</param>
    /// <param name="time">Tells how long it took.</param>
    /// <param name="today">Emulsions on the shelf today; none: all of the shop's. The others are new to it, and trying them has its price.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="InputProblemException">A job or the shop cannot be planned, or no shelf serves every job; the jobs are named.</exception>
    public static (ShelfCase Case, ShelfAnswer Answer) Choose(
        IReadOnlyList<ShelfWork> work, Shop shop, int? most, TimeProvider time, IReadOnlySet<string>? today = null, CancellationToken cancel = default)
    {
        var emulsions = shop.Emulsions;
        var colours = Colours(work, shop, cancel);
        var grams = emulsions.ToDictionary(e => e.Id, _ => colours.Sum(c => c.TimesPerMonth * c.Costs.Max(cost => cost.Grams)) / emulsions.Count);
        (IReadOnlyDictionary<string, double> Grams, double Cost)? best = null;
        var met = new HashSet<string>();
        for (var round = 0; round < MostRounds; round++)
        {
            cancel.ThrowIfCancellationRequested();
            var answer = ShelfChoice.Of(CaseOf(colours, shop, grams, most, today), null, time, null, cancel);
            foreach (var id in answer.Keep)
                grams[id] = Made(answer, id).Sum(c => c.TimesPerMonth * c.Of(id).Grams);

            // Judged by the waste that its own jobs leave, each emulsion in the size that suits them, not by the one it was chosen with.
            var own = CaseOf(colours, shop, grams, most, today);
            var cost = own.Emulsions.Where(e => answer.Keep.Contains(e.Id)).Sum(e =>
                e.FixedCostPerMonth + e.Containers.Min(size => size.FixedCostPerMonth + (grams[e.Id] * size.PricePerGram)) + Made(answer, e.Id).Sum(c => c.TimesPerMonth * c.Of(e.Id).WithoutEmulsion));
            if (best is null || cost < best.Value.Cost)
                best = (new Dictionary<string, double>(grams), cost);
            if (!met.Add(string.Join('|', answer.Keep)))
                break;
        }

        // Told by the case it ended with, so that the shelf, its proof and the price of every other one rest on the same waste.
        var shelf = CaseOf(colours, shop, best!.Value.Grams, most, today);
        var told = ShelfChoice.Of(shelf, new ShopWorlds(shop, colours, new ShopStock(best.Value.Grams)), time, null, cancel);
        return (shelf, told with { Notes = [.. told.Notes, KeepingNote, WasteNote, DoubtNote, .. shop.Emulsions.All(IsKept(today)) ? [] : new[] { TryingNote }] });

        IEnumerable<ColourWork> Made(ShelfAnswer answer, string id) => colours.Where(c => answer.Assignments[c.Name] == id);
    }

    private static ShelfCase CaseOf(IReadOnlyList<ColourWork> colours, Shop shop, IReadOnlyDictionary<string, double> gramsPerMonth, int? most, IReadOnlySet<string>? today)
    {
        var stock = new ShopStock(gramsPerMonth);
        var isKept = IsKept(today);
        return new(
            [.. shop.Emulsions.Select(e => new ShelfEmulsion(e.Id, ShopStock.MinutesToKeep(e) / 60 * ShopStock.LabourPerHour(shop).Value)
            {
                KeptToday = isKept(e),
                SwitchingCostPerMonth = isKept(e) ? 0 : ShopStock.TryingPerMonth(shop),
                Containers = [.. ShopStock.Sizes(e).Select(size => new ShelfContainer(size.Grams, size.Cost) { FixedCostPerMonth = stock.WasteGrams(e, size) * size.CostPerKg / 1000 })],
            })],
            [.. colours.Select(c => new ShelfJob(c.Name, c.TimesPerMonth, c.Costs.ToDictionary(cost => cost.Emulsion, cost => cost.WithoutEmulsion))
            {
                GramsPerScreen = c.Costs.ToDictionary(cost => cost.Emulsion, cost => cost.Grams),
            })])
        {
            Most = most,
            Currency = shop.Prices.Currency,
        };
    }

    private static Func<StencilEmulsion, bool> IsKept(IReadOnlySet<string>? today) => emulsion => today?.Contains(emulsion.Id) ?? true;

    private static List<ColourWork> Colours(IReadOnlyList<ShelfWork> work, Shop shop, CancellationToken cancel)
    {
        var colours = new List<ColourWork>();
        var unserved = new ProblemList();
        foreach (var (job, times) in work)
        {
            foreach (var colour in job.Colours)
            {
                cancel.ThrowIfCancellationRequested();
                var name = $"{job.Name}: {colour.Name}";
                var costs = ColourCosts.Of(job, colour, shop);
                if (costs.Count == 0)
                    unserved.Add($"No emulsion on this shelf may be used for {name}.", "the shop's emulsions", $"`silkwright plan` of that job names the nearest way out; or leave the job out.");
                colours.Add(new ColourWork(Once(name, colours), times, costs));
            }
        }

        if (colours.Count == 0)
            unserved.Add("There is no job to choose a shelf for.", "the jobs", "Give the jobs of a usual month.");
        unserved.ThrowIfAny();
        return colours;
    }

    /// <summary>Jobs of one name are told apart by number.</summary>
    private static string Once(string name, List<ColourWork> before)
    {
        var same = before.Count(other => other.Name == name || other.Name.StartsWith($"{name} (", StringComparison.Ordinal));
        return same == 0 ? name : $"{name} ({same + 1})";
    }
}
