using System.Globalization;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Statistics;

namespace Silkwright.Life;

/// <summary>How many impressions a stencil lasts.</summary>
/// <remarks>
/// A Weibull life around a median by family, ink and finish, mixed with the early failures of stencils that did not cure
/// through; each failed stencil is replaced within the run. docs/engines/life.md, equations 1 to 5.
/// </remarks>
public static class StencilLife
{
    /// <summary>Failures come somewhat faster with age: wear and attack together. [1]. Common practice, 1.2 to 3 would pass.</summary>
    public const double Shape = 1.7;

    /// <summary>
    /// Share of stencils with a fault of making that nobody saw (damp, grease, dust, a nick), which fail as early as uncured
    /// ones. [1] A guess for a shop that checks its screens; no source. Every breakdown that is written down improves it.
    /// </summary>
    internal static readonly Estimate UnseenFault = new(0.02, 0.005, 0.06, Ground.CommonPractice);

    /// <summary>A stencil not cured through fails at this share of a sound one's life, [1], ...</summary>
    private const double UncuredShare = 0.2;

    /// <summary>... or about here, whichever comes first: rushed screens fail at 300 to 500 prints. Common practice.</summary>
    private const double UncuredMedian = 400;

    /// <summary>Life grows with the square root of EOM, within these factors. [1]. Common practice.</summary>
    private const double ThinnestFactor = 0.4;
    private const double ThickestFactor = 1.3;

    private const int CurvePoints = 60;

    /// <summary>Steps of the renewal grid at the ends of a life's interval, which weigh a sixth each.</summary>
    private const int StepsAtEnds = 80;

    /// <exception cref="ArgumentOutOfRangeException">Impressions below 0, EOM not finite or a chance outside 0 to 1.</exception>
    public static LifeResult Of(LifeCase life)
    {
        if (life.Impressions < 0)
            throw new ArgumentOutOfRangeException(nameof(life), life.Impressions, "A run cannot have fewer than 0 impressions.");
        if (!(life.WellCured >= 0 && life.WellCured <= 1))
            throw new ArgumentOutOfRangeException(nameof(life), life.WellCured, "The chance of a through-cure lies between 0 and 1.");
        // In logarithms: a life known to a factor of ten must not reach down to nothing.
        var sound = Propagation.Through(
            x => x[0] + Math.Log(EomFactor(x[1])),
            [new("life of such stencils", Usual(life).Map(Math.Log)), new("emulsion over mesh", life.EomUm)]).Estimate.Map(Math.Exp);
        var fault = life.Learnt?.UnseenFault ?? UnseenFault;
        var ground = life.Learnt?.Factor.Ground ?? Ground.CommonPractice;
        var worst = Mixed(sound.Low, life.WellCured, fault.High);
        var best = Mixed(sound.Value, life.WellCured, fault.Value);
        var luckiest = Mixed(sound.High, life.WellCured, fault.Low);
        var most = Renewals.CountChances(worst, life.Impressions, StepsAtEnds);
        var usual = Renewals.CountChances(best, life.Impressions);
        var least = Renewals.CountChances(luckiest, life.Impressions, StepsAtEnds);
        double[] counts =
        [
            .. Enumerable.Range(0, Math.Max(most.Count, Math.Max(usual.Count, least.Count)))
                .Select(n => Weighed(most.ElementAtOrDefault(n), usual.ElementAtOrDefault(n), least.ElementAtOrDefault(n))),
        ];
        return new LifeResult
        {
            MedianImpressions = Between(best.Median, worst.Median, luckiest.Median, ground),
            WeibullShape = Shape,
            FinishPercent = Between(
                Sound(life.Impressions), 100 * worst.Survival(life.Impressions), 100 * luckiest.Survival(life.Impressions), ground),
            ExpectedFailures = Between(Mean(counts), Mean(least), Mean(most), ground),
            FailureChances = counts,
            Curve = CurveOf(Sound, worst, luckiest, Math.Max(1.5 * life.Impressions, 2 * best.Median)),
            Notes = [.. NotesFor(life)],
        };

        double Sound(double at) => 100 * Weighed(worst.Survival(at), best.Survival(at), luckiest.Survival(at));
    }

    /// <summary>Times to failure of sound stencils and of those that fail early.</summary>
    internal static (Weibull Sound, Weibull Early) Kinds(double soundMedian) => (
        Weibull.WithMedian(Shape, soundMedian),
        Weibull.WithMedian(Shape, Math.Min(UncuredMedian, UncuredShare * soundMedian)));

    /// <summary>Life beside that of a stencil of the usual thickness. [1]</summary>
    internal static double EomFactor(double eomUm) =>
        Math.Clamp(Math.Sqrt(Math.Max(0, eomUm) / LifeSeed.UsualEomUm), ThinnestFactor, ThickestFactor);

    /// <summary>
    /// Mean over a life that is not known: the three-point rule for a normal law of its logarithm, whose outer points lie 1.7 standard
    /// deviations out, where the ends of a 90 % interval stand. Source: Gauss and Hermite's rule, any handbook.
    /// </summary>
    private static double Weighed(double worst, double best, double luckiest) => (worst + (4 * best) + luckiest) / 6;

    private static WeibullMixture Mixed(double soundMedian, double wellCured, double unseenFault)
    {
        var (sound, early) = Kinds(soundMedian);
        return new WeibullMixture(wellCured * (1 - unseenFault), sound, early);
    }

    /// <summary>Median life at the usual thickness: the rule of thumb, drawn towards what was counted here.</summary>
    private static Estimate Usual(LifeCase life)
    {
        var seed = LifeSeed.Median(life);
        return life.Learnt?.Factor.Times(seed.Value) ?? seed;
    }

    private static double Mean(IReadOnlyList<double> counts) => counts.Select((chance, n) => n * chance).Sum();

    /// <summary>A mean and its ends, which rounding may put on the wrong side of it.</summary>
    private static Estimate Between(double mean, double low, double high, Ground ground) => new(mean, Math.Min(low, mean), Math.Max(high, mean), ground);

    private static LifePoint[] CurveOf(Func<double, double> soundPercent, WeibullMixture worst, WeibullMixture luckiest, double end) =>
    [
        .. Enumerable.Range(0, CurvePoints + 1).Select(i =>
        {
            var at = end * i / CurvePoints;
            return new LifePoint(at, soundPercent(at), 100 * worst.Survival(at), 100 * luckiest.Survival(at));
        }),
    ];

    private static IEnumerable<Note> NotesFor(LifeCase life)
    {
        yield return life.Learnt is { } learnt
            ? CountedNote(learnt)
            : new Note("Stencil life is the trade's rule of thumb until this shop's own runs are counted.", Ground.CommonPractice);
        if (!life.MadeForInk)
            yield return new Note("This emulsion is not made for this ink: expect it to soften early.", Ground.CommonPractice);
        if (life is { Family: EmulsionFamily.Diazo, MadeForInk: true, Ink: InkKind.WaterBased or InkKind.Discharge })
        {
            yield return new Note(
                "A diazo made for water has run 50\u202f000 to 75\u202f000 impressions when exposed and built properly; that is one trade report.",
                Ground.CommonPractice);
        }

        if (life.WornByWash)
            yield return new Note("It is wiped on press with what it does not stand well: six tenths of the life are taken (three tenths to all of it).", Ground.CommonPractice);
        if (life.Finish == StencilFinish.Hardened)
        {
            yield return new Note(
                "A chemically hardened stencil can usually not be reclaimed: the mesh is spent with it.", Ground.CommonPractice);
        }

        var fault = life.Learnt?.UnseenFault ?? UnseenFault;
        yield return new Note(string.Create(
            CultureInfo.InvariantCulture,
            $"About {100 * fault.Value:0.#} in 100 stencils ({100 * fault.Low:0.#} to {100 * fault.High:0.#}) are taken to have a fault that nobody saw, and to fail within hundreds."),
            fault.Ground);
        if (life.WellCured < 0.995)
        {
            yield return new Note(string.Create(
                CultureInfo.InvariantCulture,
                $"{100 * (1 - life.WellCured):0} % of such stencils are taken as not cured through and to fail within hundreds."));
        }
    }

    private static Note CountedNote(LearntLife learnt) => new(
        string.Create(
            CultureInfo.InvariantCulture,
            $"Of such stencils {(learnt.Counted == 0 ? "none" : learnt.Counted)} {(learnt.Counted > 1 ? "were" : "was")} counted in this shop")
        + (learnt.Broke == 0 ? "" : $", {learnt.Broke} until it broke")
        + (learnt.Others == 0 ? "" : $", of others {learnt.Others}")
        + string.Create(
            CultureInfo.InvariantCulture,
            $": sound ones are taken to last {learnt.Factor.Value:0.0#} times the trade's rule of thumb ({learnt.Factor.Low:0.0#} to {learnt.Factor.High:0.0#})."),
        learnt.Factor.Ground);
}
