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
    private static readonly Estimate UnseenFault = new(0.02, 0.005, 0.06, Ground.CommonPractice);

    /// <summary>A stencil not cured through fails at this share of a sound one's life, [1], ...</summary>
    private const double UncuredShare = 0.2;

    /// <summary>... or about here, whichever comes first: rushed screens fail at 300 to 500 prints. Common practice.</summary>
    private const double UncuredMedian = 400;

    /// <summary>Life grows with the square root of EOM, within these factors. [1]. Common practice.</summary>
    private const double ThinnestFactor = 0.4;
    private const double ThickestFactor = 1.3;

    private const int CurvePoints = 60;

    /// <exception cref="ArgumentOutOfRangeException">Impressions below 0, EOM not finite or a chance outside 0 to 1.</exception>
    public static LifeResult Of(LifeCase life)
    {
        if (life.Impressions < 0)
            throw new ArgumentOutOfRangeException(nameof(life), life.Impressions, "A run cannot have fewer than 0 impressions.");
        if (!(life.WellCured >= 0 && life.WellCured <= 1))
            throw new ArgumentOutOfRangeException(nameof(life), life.WellCured, "The chance of a through-cure lies between 0 and 1.");
        var sound = Propagation.Through(
            x => x[0] * EomFactor(x[1]),
            [new("life of such stencils", LifeSeed.Median(life)), new("emulsion over mesh", life.EomUm)],
            floor: 1).Estimate;
        var worst = Mixed(sound.Low, life.WellCured, UnseenFault.High);
        var best = Mixed(sound.Value, life.WellCured, UnseenFault.Value);
        var luckiest = Mixed(sound.High, life.WellCured, UnseenFault.Low);
        var counts = Renewals.CountChances(best, life.Impressions);
        return new LifeResult
        {
            MedianImpressions = new Estimate(best.Median, worst.Median, luckiest.Median, Ground.CommonPractice),
            WeibullShape = Shape,
            FinishPercent = new Estimate(
                100 * best.Survival(life.Impressions),
                100 * worst.Survival(life.Impressions),
                100 * luckiest.Survival(life.Impressions),
                Ground.CommonPractice),
            ExpectedFailures = Failures(worst, luckiest, Mean(counts), life.Impressions),
            FailureChances = counts,
            Curve = CurveOf(worst, best, luckiest, life.Impressions),
            Notes = [.. NotesFor(life)],
        };
    }

    private static WeibullMixture Mixed(double soundMedian, double wellCured, double unseenFault) => new(
        wellCured * (1 - unseenFault),
        Weibull.WithMedian(Shape, soundMedian),
        Weibull.WithMedian(Shape, Math.Min(UncuredMedian, UncuredShare * soundMedian)));

    private static double EomFactor(double eomUm) =>
        Math.Clamp(Math.Sqrt(Math.Max(0, eomUm) / LifeSeed.UsualEomUm), ThinnestFactor, ThickestFactor);

    private static double Mean(IReadOnlyList<double> counts) => counts.Select((chance, n) => n * chance).Sum();

    private static Estimate Failures(WeibullMixture worst, WeibullMixture luckiest, double mean, double run)
    {
        var most = Renewals.ExpectedCount(worst, run);
        var least = Renewals.ExpectedCount(luckiest, run);
        return new Estimate(mean, Math.Min(least, mean), Math.Max(most, mean), Ground.CommonPractice);
    }

    private static LifePoint[] CurveOf(WeibullMixture worst, WeibullMixture best, WeibullMixture luckiest, double run)
    {
        var end = Math.Max(1.5 * run, 2 * best.Median);
        return
        [
            .. Enumerable.Range(0, CurvePoints + 1).Select(i =>
            {
                var at = end * i / CurvePoints;
                return new LifePoint(at, 100 * best.Survival(at), 100 * worst.Survival(at), 100 * luckiest.Survival(at));
            }),
        ];
    }

    private static IEnumerable<Note> NotesFor(LifeCase life)
    {
        yield return new Note(
            "Stencil life is the trade's rule of thumb until this shop's own runs are counted.", Ground.CommonPractice);
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

        yield return new Note(string.Create(
            CultureInfo.InvariantCulture,
            $"About {100 * UnseenFault.Value:0} in 100 stencils ({100 * UnseenFault.Low:0.#} to {100 * UnseenFault.High:0}) are taken to have a fault that nobody saw, and to fail within hundreds."),
            Ground.CommonPractice);
        if (life.WellCured < 0.995)
        {
            yield return new Note(string.Create(
                CultureInfo.InvariantCulture,
                $"{100 * (1 - life.WellCured):0} % of such stencils are taken as not cured through and to fail within hundreds."));
        }
    }
}
