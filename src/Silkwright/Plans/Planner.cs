using Silkwright.Estimates;

namespace Silkwright.Plans;

/// <summary>Makes the stencil plan of a job. Composes the engines; holds no physics of its own.</summary>
public static class Planner
{
    /// <summary>The plan of every colour of a job, with everything assumed.</summary>
    /// <param name="job">Films measured, needs typed, or a kind of work named; at least one colour.</param>
    /// <param name="shop">The shop as far as it is known.</param>
    /// <exception cref="InputProblemException">The job or the shop cannot be planned as given.</exception>
    public static StencilPlan Plan(Job job, Shop shop)
    {
        PlanInput.Check(job, shop);
        var (filled, assumed) = ShopAssumptions.Fill(shop);
        var coats = ShopCoats.Of(filled);
        var parts = job.Colours.Select(colour => ColourPlanner.Plan(colour, job, filled, coats)).ToArray();
        var colours = parts.Select(part => MoireCheck.On(part.Plan)).ToArray();
        var winners = parts.Select(part => part.Contest.Winner).OfType<StencilCandidate>().ToArray();
        var screens = colours.Sum(colour => 1 + (colour.Spares?.Spares ?? 0));
        return new StencilPlan
        {
            Job = job,
            ShopName = shop.Name,
            Currency = shop.Prices.Currency,
            Colours = colours,
            Screens = screens,
            Cost = winners.Length == 0 ? null : Sum(winners.Select(winner => winner.Cost.Total)),
            Minutes = winners.Length == 0
                ? Estimate.Exact(0, Ground.Model)
                : Sum(winners.Select(winner => winner.MinutesPerScreen.Times(1 + winner.Spares.Spares))),
            Films = FilmsCheck.Of(colours),
            MeasureNext = NextReading.Of([.. parts.Select(part => PlannedCoat.Of(part.Contest, part.Brief)).OfType<PlannedCoat>()], coats),
            Notes = [.. assumed, .. JobNotes(job, shop), .. colours.SelectMany(colour => colour.Notes).Distinct()],
        };
    }

    internal static IEnumerable<Note> JobNotes(Job job, Shop shop)
    {
        if (job.Garment.Colour is null && job.Garment.Dark is null)
            yield return new Note("Garment not described: a light one is assumed.", Ground.CommonPractice);
        else if (job.Garment.Dark is null)
            yield return new Note($"The garment is taken as {(ColourPlanner.IsDark(job.Garment) ? "dark" : "light")} from its colour's name.", Ground.CommonPractice);
        if (shop.Film is null)
            yield return new Note("Film density was not measured; a usual one is assumed.", Ground.CommonPractice);
        if (shop.ScreensPerDay is null)
            yield return new Note("Screens a day not given: 8 (3 to 25) are assumed for what is thrown away.", Ground.CommonPractice);
        if (shop.Prices.LabourPerHour is null || shop.Prices.PressStopPerMinute is null)
            yield return new Note("Labour and stop costs not all given: usual ones are assumed.", Ground.CommonPractice);
        if (ShopStepTests.Later(job.Date, shop) is { } later)
            yield return later;
    }

    /// <summary>Costs of one job rise and fall together (one labour rate, one room), so the ends are added as they stand.</summary>
    private static Estimate Sum(IEnumerable<Estimate> parts)
    {
        var all = parts.ToArray();
        return new Estimate(all.Sum(p => p.Value), all.Sum(p => p.Low), all.Sum(p => p.High), all.Max(p => p.Ground));
    }
}
