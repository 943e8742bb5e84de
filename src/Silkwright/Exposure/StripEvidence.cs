namespace Silkwright.Exposure;

/// <summary>Lets step-test strips correct what is believed of a window.</summary>
/// <remarks>
/// Bayes' rule on a grid over the logarithms of through-cure and room, drawn closer until it is finer than what it finds; what a day stands off the shop's level, and
/// what the shop's wedge stands off the trade's, are summed over. docs/engines/exposure.md, equation 13.
/// </remarks>
internal static class StripEvidence
{
    private const int GridHalf = 18;
    private const double GridReach = 4.5;
    private const int MostPasses = 5;
    private const double FinestNode = 0.1;

    /// <summary>A grid this fine beside the deviation it finds sums it right. [deviations]</summary>
    private const double FineEnough = 0.4;

    /// <summary>Older days than these add nothing that the wander has not taken away.</summary>
    internal const int MostDays = 12;

    /// <param name="prior">What is believed without the strips.</param>
    /// <param name="days">The strips.</param>
    /// <param name="habit">What the shop's own wedge stands off the trade's; left out where days of one shop are held against each other.</param>
    internal static LogBelief Learn(LogBelief prior, IReadOnlyList<StripDay> days, double habit = StripNoise.WedgeHabit)
    {
        if (days.Count == 0)
            return prior;
        var (through, room) = (new Axis(prior.Through, GridReach * Math.Sqrt(prior.ThroughVariance)), new Axis(prior.Room, GridReach * Math.Sqrt(prior.RoomVariance)));
        var belief = prior;
        for (var pass = 0; pass < MostPasses; pass++)
        {
            belief = Sum(prior, days, through, room, habit);
            if (through.IsFine(belief.ThroughVariance) && room.IsFine(belief.RoomVariance))
                break;
            (through, room) = (through.Closer(belief.Through, belief.ThroughVariance), room.Closer(belief.Room, belief.RoomVariance));
        }

        return belief;
    }

    private static LogBelief Sum(LogBelief prior, IReadOnlyList<StripDay> days, Axis throughs, Axis rooms, double deviation)
    {
        var habits = days.Any(day => day.HasWedge) ? NormalNodes.Of(deviation, FinestNode) : [(0, 1)];
        var points = new List<(double Through, double Room, double Log)>();
        foreach (var through in throughs.Points)
        {
            var cured = days.Select(day => CuredBy(day, through, habits)).ToArray();
            foreach (var room in rooms.Points)
            {
                var byHabit = habits.Select(habit => habit.Share).ToArray();
                var log = prior.LogDensity(through, room);
                for (var d = 0; d < days.Count; d++)
                    log += Multiply(byHabit, cured[d], days[d], through + room);
                points.Add((through, room, log + Math.Log(byHabit.Sum())));
            }
        }

        var greatest = points.Max(point => point.Log);
        return Moments([.. points.Select(point => (point.Through, point.Room, Math.Exp(point.Log - greatest)))]);
    }

    /// <summary>For each way of reading, level of the day and habit: the chance of what the day says of cure and wedge, with the way's worth and the level's own share.</summary>
    private static double[][][] CuredBy(StripDay day, double through, IReadOnlyList<(double At, double Share)> habits) => [.. day.Ways.Select(way => day.Levels.Select(level =>
    {
        var here = through + level.At;
        var chance = way.Worth * level.Share * way.Readings.Cure(here);
        return habits.Select(habit => chance * way.Readings.Wedge(here + Math.Log(CoatOptics.GoodOverLeast) + habit.At)).ToArray();
    }).ToArray())];

    /// <returns>Logarithm of what is taken out of all of them, lest they vanish day by day.</returns>
    private static double Multiply(double[] byHabit, double[][][] cured, StripDay day, double most)
    {
        var lines = day.Ways.Select(way => day.Levels.Select(level => way.Readings.Lines(most + level.At)).ToArray()).ToArray();
        for (var habit = 0; habit < byHabit.Length; habit++)
        {
            var chance = 0.0;
            for (var way = 0; way < lines.Length; way++)
            {
                for (var level = 0; level < lines[way].Length; level++)
                    chance += cured[way][level][habit] * lines[way][level];
            }

            byHabit[habit] *= chance;
        }

        var greatest = byHabit.Max();
        for (var habit = 0; habit < byHabit.Length; habit++)
            byHabit[habit] /= greatest;
        return Math.Log(greatest);
    }

    private static LogBelief Moments(List<(double Through, double Room, double Weight)> points)
    {
        var sum = points.Sum(point => point.Weight);
        var (through, room) = (points.Sum(point => point.Weight * point.Through) / sum, points.Sum(point => point.Weight * point.Room) / sum);
        return new LogBelief(
            through,
            room,
            points.Sum(point => point.Weight * Squared(point.Through - through)) / sum,
            points.Sum(point => point.Weight * Squared(point.Room - room)) / sum,
            points.Sum(point => point.Weight * (point.Through - through) * (point.Room - room)) / sum);
    }

    private static double Squared(double x) => x * x;

    /// <summary>Even places about a middle.</summary>
    private sealed record Axis(double Middle, double Reach)
    {
        private double Step => Reach / GridHalf;

        internal IEnumerable<double> Points => Enumerable.Range(-GridHalf, (2 * GridHalf) + 1).Select(i => Middle + (i * Step));

        internal bool IsFine(double variance) => Step <= FineEnough * Math.Sqrt(variance);

        internal Axis Closer(double middle, double variance) => new(middle, Math.Max(GridReach * Math.Sqrt(variance), 2 * Step));
    }
}
