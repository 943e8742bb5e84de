using Silkwright.Mesh;

namespace Silkwright.Moire;

/// <summary>Which angle, which ruling and which mesh would beat least: docs/engines/moire.md.</summary>
/// <remarks>
/// Every choice is judged by the worst within what nobody holds closer: a stretched mesh's count and a film's angle on it. A choice that
/// is quiet only where all figures are exact is no advice.
/// </remarks>
public static class MoireSearch
{
    /// <summary>A stretched mesh differs from its label by as much either way. Common practice, no source. [1]</summary>
    public const double CountDoubt = 0.02;

    /// <summary>A film lies on the screen as true as this, either way. Common practice, no source. [degrees]</summary>
    public const double AngleDoubtDegrees = 1;

    /// <summary>Rulings looked at, either way of the one asked. Our own judgement: farther off it is another picture. [1]</summary>
    private const double RulingReach = 0.25;

    private const double AngleStepDegrees = 0.5;
    private const int AngleSteps = 180;
    private const int StepsOfDoubt = (int)(AngleDoubtDegrees / AngleStepDegrees);
    private const double LinesPerInchPerCm = 2.54;

    /// <summary>Choices told.</summary>
    private const int MostChoices = 5;

    /// <summary>The case as it is asked.</summary>
    public static MoireChoice AsAsked(MoireCase asked) => Choice(asked, WorstWithinDoubt(asked));

    /// <summary>The halftone angles that beat least, in half degrees against the threads over a quarter turn, each the best of its neighbourhood; the quietest first.</summary>
    public static IReadOnlyList<MoireChoice> BestAngles(MoireCase asked)
    {
        var alone = new double[AngleSteps];
        // Without a knit, halftone and mesh are two square lattices: what is seen at an angle to the threads is seen at its mirror too.
        var last = asked.KnitWalesPerCm is null ? AngleSteps / 2 : AngleSteps - 1;
        for (var step = 0; step <= last; step++)
        {
            alone[step] = WorstOfCounts(AtStep(step));
            if (asked.KnitWalesPerCm is null)
                alone[(AngleSteps - step) % AngleSteps] = alone[step];
        }

        var within = Enumerable.Range(0, AngleSteps)
            .Select(step => Enumerable.Range(step - StepsOfDoubt, (2 * StepsOfDoubt) + 1).Max(near => alone[(near + AngleSteps) % AngleSteps]))
            .ToArray();
        return [.. Valleys(within, round: true).Select(step => Choice(AtStep(step), within[step]))];

        MoireCase AtStep(int step) => asked with { AngleDegrees = (((asked.MeshAngleDegrees + (step * AngleStepDegrees)) % 90) + 90) % 90 };
    }

    /// <summary>The rulings near the one asked that beat least at the angle asked, whole lines to the inch; the quietest first.</summary>
    public static IReadOnlyList<MoireChoice> BestRulings(MoireCase asked)
    {
        var lpi = asked.RulingPerCm * LinesPerInchPerCm;
        var (from, to) = ((int)Math.Ceiling(lpi * (1 - RulingReach)), (int)Math.Floor(lpi * (1 + RulingReach)));
        var cases = Enumerable.Range(from, to - from + 1).Select(whole => asked with { RulingPerCm = whole / LinesPerInchPerCm }).ToArray();
        var within = Array.ConvertAll(cases, WorstWithinDoubt);
        return [.. Valleys(within, round: false).Select(i => Choice(cases[i], within[i]))];
    }

    /// <summary>Every mesh with the ruling and angle asked; the quietest first.</summary>
    public static IReadOnlyList<MoireChoice> Meshes(MoireCase asked, IEnumerable<MeshFabric> onHand) =>
        [.. onHand.Select(mesh => AsAsked(asked with { Mesh = mesh })).OrderBy(choice => choice.VisibilityAtWorst)];

    private static double WorstWithinDoubt(MoireCase asked) => Enumerable.Range(-StepsOfDoubt, (2 * StepsOfDoubt) + 1)
        .Max(step => WorstOfCounts(asked with { AngleDegrees = asked.AngleDegrees + (step * AngleStepDegrees) }));

    private static double WorstOfCounts(MoireCase asked)
    {
        double[] factors = [1 - CountDoubt, 1, 1 + CountDoubt];
        return factors.Max(factor => Beats.Worst(asked with { Mesh = Stretched(asked.Mesh, factor) }));
    }

    /// <summary>The same cloth with its threads closer or farther apart; as much of it stays open.</summary>
    private static MeshFabric Stretched(MeshFabric mesh, double factor) =>
        mesh with { CountPerCm = mesh.CountPerCm * factor, ThreadUm = mesh.ThreadUm / factor };

    private static MoireChoice Choice(MoireCase asked, double timesSeen) =>
        new(asked, Beats.Of(asked) is [var plainest, ..] ? plainest : null, Visibility.Of(timesSeen));

    /// <summary>The middles of the stretches that lie lower than what is beside them; the lowest first.</summary>
    private static IEnumerable<int> Valleys(double[] values, bool round)
    {
        return Enumerable.Range(0, values.Length)
            .Where(from => At(from - 1) > values[from])
            .Select(from => (From: from, To: EndOf(from)))
            .Where(flat => At(flat.To + 1) > values[flat.From])
            .OrderBy(flat => values[flat.From])
            .Take(MostChoices)
            .Select(flat => (flat.From + flat.To) / 2 % values.Length);

        int EndOf(int from)
        {
            var to = from;
            while (At(to + 1) == values[from])
                to++;
            return to;
        }

        double At(int i) => round ? values[(i + values.Length) % values.Length] : i < 0 || i >= values.Length ? double.PositiveInfinity : values[i];
    }
}
