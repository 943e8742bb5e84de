using Silkwright.Estimates;

namespace Silkwright.Coating.Learning;

/// <summary>Which coat read now tells most of the coats to come: docs/engines/coating.md, equation 19.</summary>
/// <remarks>
/// How far a normal belief narrows does not hang on what will be read, so that it is known beforehand: each reading is taken in at its expected value, the
/// spreads kept.
/// </remarks>
public static class NextCoatReading
{
    /// <summary>One reading at a few places, and the bare mesh beside it. Common practice. [min]</summary>
    public const double UsualMinutes = 3;

    /// <param name="learnt">What was read so far.</param>
    /// <param name="coats">Coats to come; each is one that may be read.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <returns>The best first; a coat that stands there twice is tried once.</returns>
    public static IReadOnlyList<ReadingWorth> Of(CoatHierarchy learnt, IReadOnlyList<CoatObservation> coats, CancellationToken cancel = default) => Of(_ => learnt, coats, cancel);

    /// <param name="learntFor">What answers for each coat; a reading narrows only coats that the same answers for.</param>
    /// <inheritdoc cref="Of(CoatHierarchy, IReadOnlyList{CoatObservation}, CancellationToken)"/>
    public static IReadOnlyList<ReadingWorth> Of(Func<CoatObservation, CoatHierarchy> learntFor, IReadOnlyList<CoatObservation> coats, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(learntFor);
        ArgumentNullException.ThrowIfNull(coats);
        CoatHierarchy[] learnt = [.. coats.Select(learntFor)];
        (double Model, double Screen, double Reading)[] before = [.. coats.Select((coat, i) => learnt[i].Variances(coat))];
        return
        [
            .. coats.Select((coat, i) => (coat, i)).DistinctBy(one => CoatShape.Of(one.coat) is var shape ? (shape, one.coat.Shop, one.coat.Operator, one.coat.Screen) : default)
                .Select(one => Tried(one.coat, one.i)).OrderByDescending(worth => worth.PerMinuteUm),
        ];

        ReadingWorth Tried(CoatObservation coat, int at)
        {
            cancel.ThrowIfCancellationRequested();
            var own = learnt[at];
            var after = own.With(new CoatRead(coat, own.BestUm(coat)));
            // One reading as expected would also make the residual look smaller: that is not known beforehand.
            var kept = own.ResidualVariance / after.ResidualVariance;
            (double BeforeUm, double AfterUm)[] narrowed = [.. coats.Select((other, i) =>
            {
                var halfUm = HalfUm(before[i].Model + before[i].Screen + before[i].Reading);
                if (learnt[i] != own)
                    return (halfUm, halfUm);
                var left = after.Variances(other);
                return (halfUm, HalfUm(((left.Model + left.Screen) * kept) + before[i].Reading));
            })];
            var shrinks = narrowed.Sum(one => one.BeforeUm - one.AfterUm);
            return new ReadingWorth(at, 2 * shrinks, 2 * shrinks / UsualMinutes, narrowed);
        }
    }

    private static double HalfUm(double variance) => Estimate.UsualHalfWidth * Math.Sqrt(variance);
}
