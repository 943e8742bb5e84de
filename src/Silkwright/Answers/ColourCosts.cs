using Silkwright.Estimates;
using Silkwright.Plans;

namespace Silkwright.Answers;

/// <summary>What each emulsion that may be used costs for one colour: what a choice over many jobs adds up.</summary>
public static class ColourCosts
{
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
        var (_, contest, _, _) = ColourPlanner.Plan(colour, job, ShopAssumptions.Fill(fresh).Shop);
        return
        [
            .. contest.Allowed.Where(candidate => candidate.Emulsion.ShelfId == candidate.Emulsion.Id).Select(candidate =>
            {
                var cost = candidate.Cost;
                var screens = cost.Case.Screens;
                return new ColourCost(
                    candidate.Emulsion.Id,
                    screens,
                    cost.Total.Value - cost.Waste.Value,
                    screens * cost.Case.GramsPerScreen.Value);
            }).OrderBy(cost => cost.Cost),
        ];
    }
}
