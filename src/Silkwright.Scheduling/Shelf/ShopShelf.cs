using Silkwright.Answers;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Plans;
using Silkwright.Stock;

namespace Silkwright.Scheduling.Shelf;

/// <summary>The few emulsions a shop should keep for the jobs it makes: every cost from the engines. docs/engines/shelf.md, "From a shop".</summary>
/// <remarks>
/// What is thrown away of an emulsion depends on all that is made with it, so the choice is made again with the waste that its own
/// jobs leave, until the shelf stays the same; of the shelves met on the way the cheapest is told.
/// </remarks>
public static class ShopShelf
{
    /// <summary>Step test, control strip and the crew's practice that each emulsion kept asks for. Common practice, no source. [min/month]</summary>
    private const double MinutesToKeep = 60;

    private const double DaysPerMonth = FamilyValues.DaysPerMonth;

    /// <summary>Rounds after which shelves only repeat each other.</summary>
    private const int MostRounds = 8;

    private static readonly Note KeepingNote = new(
        "Keeping an emulsion is taken to cost an hour a month, for its step test, control strips and practice.", Ground.CommonPractice);

    private static readonly Note WasteNote = new(
        "What is thrown away is worked out from the jobs each emulsion would get, and the shelf chosen again with it until it stays the same; the proof holds for that waste.",
        Ground.Model);

    /// <summary>Chooses the shelf.</summary>
    /// <param name="work">The month's jobs.</param>
    /// <param name="shop">The shop with its emulsions: those on the shelf today.</param>
    /// <param name="most">The most emulsions to keep; none: as many as pay.</param>
    /// <param name="time">Tells how long it took.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="InputProblemException">A job or the shop cannot be planned, or no shelf serves every job; the jobs are named.</exception>
    public static (ShelfCase Case, ShelfAnswer Answer) Choose(
        IReadOnlyList<ShelfWork> work, Shop shop, int? most, TimeProvider time, CancellationToken cancel = default)
    {
        var emulsions = shop.Emulsions;
        var colours = Colours(work, shop, cancel);
        var grams = emulsions.ToDictionary(e => e.Id, _ => colours.Sum(c => c.TimesPerMonth * c.Costs.Max(cost => cost.Grams)) / emulsions.Count);
        (ShelfCase Case, double Cost)? best = null;
        var met = new HashSet<string>();
        for (var round = 0; round < MostRounds; round++)
        {
            cancel.ThrowIfCancellationRequested();
            var shelf = CaseOf(colours, shop, grams, most);
            var answer = ShelfChoice.Of(shelf, time, null, cancel);
            foreach (var id in answer.Keep)
                grams[id] = colours.Where(c => answer.Assignments[c.Name] == id).Sum(c => c.TimesPerMonth * c.Of(id).Grams);

            // Judged by the waste that its own jobs leave, not by the one it was chosen with.
            var own = CaseOf(colours, shop, grams, most);
            var cost = own.Emulsions.Where(e => answer.Keep.Contains(e.Id)).Sum(e => e.FixedCostPerMonth) + answer.RunningCostPerMonth;
            if (best is null || cost < best.Value.Cost)
                best = (own, cost);
            if (!met.Add(string.Join('|', answer.Keep)))
                break;
        }

        // Told by the case it ended with, so that the shelf, its proof and the price of every other one rest on the same waste.
        var told = ShelfChoice.Of(best!.Value.Case, time, null, cancel);
        return (best.Value.Case, told with { Notes = [.. told.Notes, KeepingNote, WasteNote] });
    }

    private static ShelfCase CaseOf(IReadOnlyList<ColourWork> colours, Shop shop, Dictionary<string, double> gramsPerMonth, int? most) => new(
        [.. shop.Emulsions.Select(e => new ShelfEmulsion(e.Id, (KeepingCost(shop) * (e.LaidWith is null ? 1 : 2)) + WasteCost(e, gramsPerMonth[e.Id])) { KeptToday = true })],
        [.. colours.Select(c => new ShelfJob(c.Name, c.TimesPerMonth, c.Costs.ToDictionary(cost => cost.Emulsion, cost => cost.Cost)))])
    {
        Most = most,
    };

    private static double KeepingCost(Shop shop) =>
        MinutesToKeep / 60 * (shop.Prices.LabourPerHour ?? WorkTimes.LabourPerHour.Value);

    /// <summary>What dies of an emulsion in a month that uses so much of it. [currency/month]</summary>
    private static double WasteCost(StencilEmulsion kept, double gramsPerMonth)
    {
        var emulsion = kept.Liquid();
        var container = emulsion.Price?.Grams ?? ContainerPrice.UsualGrams;
        var pricePerGram = FamilyValues.PricePerKg(emulsion).Value / 1000;
        var life = PotLife.LifeDays(emulsion);
        if (gramsPerMonth <= 0)
            return container * pricePerGram * DaysPerMonth / life.Value;
        var percent = Waste.SharePercent(new WasteCase(
            emulsion.Family, container, life, Estimate.Within(gramsPerMonth / DaysPerMonth, 0.2, Ground.Model))).Value;
        return gramsPerMonth * pricePerGram * percent / (100 - Math.Min(percent, 99));
    }

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

    private sealed record ColourWork(string Name, double TimesPerMonth, IReadOnlyList<ColourCost> Costs)
    {
        public ColourCost Of(string emulsion) => Costs.First(cost => cost.Emulsion == emulsion);
    }
}
