using MathNet.Numerics.Distributions;

namespace Silkwright.Coating.Learning;

/// <summary>The shortest strokes for a wanted thickness, with the chance to land: docs/engines/coating.md, equation 20.</summary>
public sealed record CoatAim
{
    /// <summary>Chances this close count as equal, and the shorter strokes win. Our own judgement. [points]</summary>
    private const double EqualPoints = 5;

    /// <summary>Below this chance nothing lands, and the nearest is told. Our own judgement. [%]</summary>
    private const double HopelessPercent = 1;

    /// <summary>Readings after which the chance is told once more.</summary>
    public const int MoreReadings = 5;

    /// <summary>The strokes to lay.</summary>
    public required AimedCoat Best { get; init; }

    /// <summary>The likeliest of those with less work; none where there is none.</summary>
    public AimedCoat? Shorter { get; init; }

    /// <summary>The best of each other pair of hands and trough, the likeliest first.</summary>
    public required IReadOnlyList<AimedCoat> Others { get; init; }

    /// <summary>The chance if five readings of this coat came out as expected. [%]</summary>
    public required double ChanceAfterReadingsPercent { get; init; }

    /// <summary>What is laid and used.</summary>
    public required CoatPrediction Laid { get; init; }

    /// <param name="wantedUm">Emulsion over mesh. [µm], 0 or more</param>
    /// <param name="toleranceUm">Either way. [µm], above 0</param>
    /// <param name="hands">Who may coat with which trough; their strokes are what is looked for. At least one.</param>
    /// <param name="learnt">What was read so far.</param>
    /// <exception cref="ArgumentOutOfRangeException">A thickness makes no sense.</exception>
    public static CoatAim Of(double wantedUm, double toleranceUm, IReadOnlyList<CoatObservation> hands, CoatHierarchy learnt)
    {
        ArgumentNullException.ThrowIfNull(hands);
        ArgumentNullException.ThrowIfNull(learnt);
        StrokeRecipe.ThrowIfNoThickness(wantedUm);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(toleranceUm);
        AimedCoat[] all = [.. from hand in hands from recipe in StrokeRecipe.InUse select Aimed(hand with { Strokes = recipe.Strokes }, recipe.Effort)];
        var best = Shortest(all, wantedUm);
        return new CoatAim
        {
            Best = best,
            Shorter = all.Where(one => one.Effort < best.Effort).MaxBy(one => one.ChancePercent),
            Others = [.. all.GroupBy(one => (one.Coat.Operator, one.Coat.Trough)).Select(some => Shortest(some, wantedUm)).Where(one => one != best).OrderByDescending(one => one.ChancePercent)],
            ChanceAfterReadingsPercent = AfterReadings(best.Coat),
            Laid = LearntCoat.Predict(best.Coat, learnt),
        };

        AimedCoat Aimed(CoatObservation coat, int effort) => new(coat, learnt.ExpectMean(coat), Chance(learnt, coat, 1), effort);

        double Chance(CoatHierarchy known, CoatObservation coat, double kept)
        {
            var (model, screen, _) = known.Variances(coat);
            var spread = Math.Sqrt((model + screen) * kept);
            var at = known.BestUm(coat);
            return 100 * (Normal.CDF(at, spread, wantedUm + toleranceUm) - Normal.CDF(at, spread, wantedUm - toleranceUm));
        }

        double AfterReadings(CoatObservation coat)
        {
            var after = Enumerable.Range(0, MoreReadings).Aggregate(learnt, (known, _) => known.With(new CoatRead(coat, known.BestUm(coat))));
            return Chance(after, coat, learnt.ResidualVariance / after.ResidualVariance);
        }
    }

    /// <summary>The least work among the likeliest; what comes nearest where nothing is likely.</summary>
    private static AimedCoat Shortest(IEnumerable<AimedCoat> some, double wantedUm)
    {
        var list = some.ToArray();
        var most = list.Max(one => one.ChancePercent);
        if (most < HopelessPercent)
            return list.MinBy(one => Math.Abs(one.MeanUm.Value - wantedUm))!;
        return list.Where(one => one.ChancePercent >= most - EqualPoints).OrderBy(one => one.Effort).ThenByDescending(one => one.ChancePercent).First();
    }
}
