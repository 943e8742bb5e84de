using Silkwright.Choosing;
using Silkwright.Estimates;
using Silkwright.Plans;

namespace Silkwright.Answers;

/// <summary>What each emulsion that may be used costs for one colour: what a choice over many jobs adds up.</summary>
public static class ColourCosts
{
    private const double GramsPerKg = 1000;

    /// <param name="job">The job.</param>
    /// <param name="colour">Which of its colours.</param>
    /// <param name="shop">The shop. Its lots count as fresh: a shelf is chosen for months, and over lots are replaced.</param>
    /// <returns>
    /// The shop's own emulsions that may be used, cheapest first; empty where none may. A film laid with emulsion is among them where the
    /// shop names the pair: it keeps two things for it.
    /// </returns>
    /// <exception cref="InputProblemException">The job or the shop cannot be planned as given.</exception>
    public static IReadOnlyList<ColourCost> Of(Job job, JobColour colour, Shop shop)
    {
        var fresh = shop with { Emulsions = [.. shop.Emulsions.Select(emulsion => emulsion with { SensitisedOn = null, ReceivedOn = null })] };
        PlanInput.Check(job, fresh);
        var (_, contest, _) = ColourPlanner.Plan(colour, job, ShopAssumptions.Fill(fresh).Shop);
        return
        [
            .. contest.Allowed.Where(candidate => candidate.Emulsion.ShelfId == candidate.Emulsion.Id)
                .Select(candidate => Of(candidate.Emulsion.Id, candidate.Cost.Case))
                .OrderBy(cost => cost.Cost),
        ];
    }

    /// <summary>Cost is a straight line in the price of the emulsion: two prices tell the grams, remakes among them.</summary>
    private static ColourCost Of(string emulsion, CostCase planned)
    {
        var cost = planned with { WastePercent = Estimate.Exact(0, Ground.Model) };
        var free = TotalAt(0);
        return new ColourCost(emulsion, cost, CostModel.Of(cost).Total.Value, free, TotalAt(GramsPerKg) - free);

        double TotalAt(double pricePerKg) => CostModel.Of(cost with { PricePerKg = Estimate.Exact(pricePerKg, Ground.Model) }).Total.Value;
    }
}
