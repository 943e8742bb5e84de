namespace Silkwright.Choosing;

/// <summary>Holds choices against each other when their intervals overlap: docs/engines/choosing.md, equations 7 to 9.</summary>
public static class Comparing
{
    /// <summary>Possible worlds drawn: enough for a chance to be right to about one point in a hundred.</summary>
    private const int Draws = 4000;

    /// <summary>Slices of an input's range within which it counts as known.</summary>
    private const int Slices = 10;

    /// <summary>An amount settles a choice only when knowing it saves this share of what is lost to not knowing. [1]</summary>
    private const double WorthKnowing = 0.2;

    /// <summary>Choices weighed against each other for what would settle it: the work grows with their square, and the dearer ones settle nothing.</summary>
    private const int MostWeighed = 12;

    /// <summary>Costs nearer than this are the same for all practical purposes. [currency]</summary>
    private const double Nothing = 0.05;

    /// <summary>Compares choices for one colour of one job.</summary>
    /// <param name="contenders">At least one.</param>
    /// <param name="seed">Of the draws; the same seed gives the same answer.</param>
    /// <exception cref="ArgumentException">There is none to compare.</exception>
    public static Comparison Of(IReadOnlyList<Contender> contenders, int seed)
    {
        if (contenders.Count == 0)
            throw new ArgumentException("There must be a choice to compare.", nameof(contenders));
        Contender[] ranked = [.. contenders.OrderBy(c => c.Cost.Total.Value).ThenBy(c => c.Id, StringComparer.Ordinal)];
        var draws = new CostDraws(ranked, Draws, seed);
        Standing[] standings = [.. ranked.Select((contender, i) => Stand(contender, i, ranked[0], draws))];
        return new Comparison
        {
            Standings = standings,
            Robust = standings.MinBy(standing => standing.WorstRegret)!.Id,
            Settles = Settles(ranked, draws, standings[0].MeanRegret),
        };
    }

    private static Standing Stand(Contender contender, int index, Contender first, CostDraws draws)
    {
        double best = 0, sum = 0, worst = 0;
        for (var draw = 0; draw < draws.Count; draw++)
        {
            var regret = draws.Total(index, draw) - draws.Least(draw);
            best += regret <= 0 ? 1 : 0;
            sum += regret;
            worst = Math.Max(worst, regret);
        }

        return new Standing(
            contender.Id, CostModel.Difference(contender.Cost, first.Cost), 100 * best / draws.Count, sum / draws.Count, worst);
    }

    /// <summary>Expected value of perfect partial information, by slices of each input's draws.</summary>
    private static Settling? Settles(Contender[] ranked, CostDraws draws, double regretNow)
    {
        if (ranked.Length == 1 || regretNow < Nothing)
            return null;
        var expected = Enumerable.Range(0, draws.Count).Average(draw => draws.Total(0, draw));
        var saved = draws.Varying()
            .Where(input => input.Contender is not >= MostWeighed)
            .Select(input => (input.Contender, input.Input, Saves: expected - KnownCost(input.Amounts, Math.Min(ranked.Length, MostWeighed), draws)))
            .MaxBy(input => input.Saves);
        return saved.Saves < WorthKnowing * regretNow
            ? null
            : new Settling(
                saved.Input, saved.Contender is { } own ? ranked[own].Id : null, regretNow, Math.Max(0, regretNow - saved.Saves));
    }

    /// <summary>Expected cost when the choice is made anew in each slice of an input.</summary>
    private static double KnownCost(double[] amounts, int choices, CostDraws draws)
    {
        var order = Enumerable.Range(0, amounts.Length).ToArray();
        Array.Sort((double[])amounts.Clone(), order);
        var slice = order.Length / Slices;
        var sum = 0.0;
        for (var s = 0; s < Slices; s++)
        {
            var within = order.AsSpan(s * slice, slice);
            var least = double.PositiveInfinity;
            for (var choice = 0; choice < choices; choice++)
            {
                var cost = 0.0;
                foreach (var draw in within)
                    cost += draws.Total(choice, draw);
                least = Math.Min(least, cost);
            }

            sum += least;
        }

        return sum / (slice * Slices);
    }
}
