using MathNet.Numerics.Distributions;
using Silkwright.Exposure;

namespace Silkwright.Tests.Exposure;

/// <summary>
/// A shop made of a coat, a lamp and hands, from which strips are drawn. Shares no code with the engine, and has what the engine lacks: light uneven from strip to
/// strip, a coat uneven from strip to strip, and a coat for which strong light is not quite worth long light (Schwarzschild's exponent off 1).
/// </summary>
/// <remarks>All spreads common practice, no source; each is one that a shop would call usual.</remarks>
internal sealed class SimulatedShop
{
    private readonly Random random;
    private readonly double penetration;
    private readonly double wedgeHabit;
    private readonly double exponent;
    private readonly double lineUm;
    private readonly double scatter;

    internal SimulatedShop(int seed, double usualThrough, double usualMost, double lineUm)
    {
        random = new Random(seed);
        this.lineUm = lineUm;
        penetration = 85 * Factor(1.3);
        scatter = 6 * Factor(1.2);
        exponent = 1 + (0.03 * Drawn());
        wedgeHabit = Math.Exp(0.15 * Drawn());
        Through = usualThrough * Factor(2.5);
        Most = Through * usualMost / usualThrough * Factor(1.35);
    }

    /// <summary>What cures the mean coat through on a mean day.</summary>
    internal double Through { get; }

    /// <summary>What closes the needed line by 30 % on a mean day.</summary>
    internal double Most { get; }

    /// <summary>What everything asks now beside what it asked at first: a lamp that has aged, a slower batch. [1]</summary>
    internal double Asks { get; set; } = 1;

    /// <summary>The exposure that turns out well on most of this shop's days, tried amount by amount from the least to twice it; the shop's own light and hands, its strips' reading left out.</summary>
    internal double Best
    {
        get
        {
            const int amounts = 400;
            var (scatter, room) = (Math.Sqrt((0.1 * 0.1) + (0.05 * 0.05)), Math.Log(Most / Through));
            var highest = Math.Min(room, Math.Log(2));
            var coats = Enumerable.Range(-12, 25).Select(i => i * 0.25).Select(away => (Thicker: 6 * away / penetration, Share: Math.Exp(-away * away / 2))).ToArray();
            return Through * Math.Exp(Enumerable.Range(0, amounts + 1).Select(i => highest * i / amounts).MaxBy(over =>
                coats.Sum(coat => coat.Share * Math.Max(0, Normal.CDF(0, scatter, room - over) - Normal.CDF(0, scatter, coat.Thicker - over)))));
        }
    }

    /// <summary>Strips of one day.</summary>
    /// <param name="amounts">What each is given.</param>
    /// <param name="on">The day.</param>
    /// <param name="dampFrom">The first strip that was not dry, from 0; none: all were.</param>
    /// <param name="dampShare">What its light is worth beside a dry one's: damp looks like under-exposed. [1]</param>
    internal StepTest[] Test(IReadOnlyList<double> amounts, DateOnly on, int? dampFrom = null, double dampShare = 0.5)
    {
        var day = Math.Exp(0.1 * Drawn()) / Asks;
        var thicknessUm = 57 + (6 * Drawn());
        var washOut = Math.Pow(10, 0.15 * (random.NextDouble() - 0.5));
        return [.. amounts.Select((amount, i) => Strip(amount, i >= dampFrom ? day * dampShare : day, thicknessUm, washOut) with { On = on })];
    }

    private StepTest Strip(double amount, double day, double thicknessUm, double washOut)
    {
        var light = Math.Exp(0.05 * Drawn());
        // Dose beside that of the mean coat's through-cure; a longer time is worth a little more or less than its share.
        var dose = Math.Pow(amount / Through, exponent) * day * light;
        var thick = thicknessUm + (1.5 * Drawn());
        var curedUm = 57 + (penetration * Math.Log(dose));
        var finger = penetration * 0.15 * ((2 * random.NextDouble()) - 1);
        var solid = 0;
        // Step k is solid while its light still hardens the face; a usual shop reads 7 from half a step below a quarter over through-cure to half a step above.
        while (solid < 21 && dose * Math.Pow(10, -0.15 * (solid + 1 - 7.5)) >= 1.25 * wedgeHabit * washOut)
            solid++;
        if (random.NextDouble() < 0.1)
            solid = Math.Clamp(solid + (random.NextDouble() < 0.5 ? -1 : 1), 0, 21);
        var closedUm = 0.15 * lineUm * (1 + (0.05 * Drawn()));
        var edgeUm = (0.15 * lineUm) + (scatter * Math.Log(amount * day * light / Most));
        return new StepTest(amount, solid, curedUm + finger < thick, edgeUm <= closedUm ? lineUm : 2 * lineUm) { EomUm = 5 + thick - 57 + Drawn() };
    }

    private double Factor(double within90) => Math.Exp(Math.Log(within90) / 1.645 * Drawn());

    private double Drawn() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
