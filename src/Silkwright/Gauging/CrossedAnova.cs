using MathNet.Numerics.Distributions;

namespace Silkwright.Gauging;

/// <summary>Analysis of variance of a balanced crossed study: everybody reads every part equally often.</summary>
/// <remarks>
/// Two random factors with interaction: D. C. Montgomery, Design and Analysis of Experiments, ch. 13; AIAG, Measurement Systems Analysis, 4th edition. With one
/// operator, or one part, it is the one-way analysis: ISO 5725-2:1994, 7.4.5, with laboratories in the operators' place.
/// </remarks>
public sealed record CrossedAnova
{
    /// <summary>An interaction with a greater chance than this says nothing and is pooled with the error. Common practice.</summary>
    public const double PooledAbove = 0.25;

    public required AnovaRow Part { get; init; }

    public required AnovaRow Operator { get; init; }

    /// <summary>As computed before pooling; none where nobody read a part twice.</summary>
    public AnovaRow? Interaction { get; init; }

    /// <summary>After pooling, where that was done.</summary>
    public required AnovaRow Error { get; init; }

    /// <summary>The interaction's F said nothing: it counts as error.</summary>
    public required bool IsPooled { get; init; }

    public required int Repeats { get; init; }

    public int Parts => Part.Freedom + 1;

    public int Operators => Operator.Freedom + 1;

    /// <summary>The variances, each at least 0.</summary>
    public VarianceParts Variances => VariancesOf(Part.MeanSquare, Operator.MeanSquare, Interaction?.MeanSquare ?? 0, Error.MeanSquare);

    /// <summary>The variances that mean squares stand for. [µm²]</summary>
    internal VarianceParts VariancesOf(double part, double hand, double interaction, double error)
    {
        var kept = Interaction is { Freedom: > 0 } && !IsPooled;
        var under = kept ? interaction : error;
        return new VarianceParts(
            error,
            Operator.Freedom > 0 ? Math.Max(0, (hand - under) / (Repeats * Parts)) : 0,
            kept ? Math.Max(0, (interaction - error) / Repeats) : 0,
            Part.Freedom > 0 ? Math.Max(0, (part - under) / (Repeats * Operators)) : 0);
    }

    /// <summary>Splits the readings' spread.</summary>
    /// <returns>None where the study is not balanced, or tells nothing of its own scatter.</returns>
    internal static CrossedAnova? Of(StudyLayout layout)
    {
        if (!layout.IsBalanced)
            return null;
        var (parts, hands, repeats) = (layout.Parts.Count, layout.Operators.Count, layout.CellCounts[0]);
        double[] values = [.. layout.Readings.Select(reading => reading.ValueUm)];
        var grand = values.Average();
        var partMeans = Means(layout.PartOf, parts);
        var handMeans = Means(layout.OperatorOf, hands);
        var cellMeans = Means(layout.CellOf, parts * hands);
        var ofPart = new AnovaRow(hands * repeats * partMeans.Sum(mean => Square(mean - grand)), parts - 1);
        var ofHand = new AnovaRow(parts * repeats * handMeans.Sum(mean => Square(mean - grand)), hands - 1);
        var crossed = new AnovaRow(
            repeats * cellMeans.Select((mean, cell) => Square(mean - partMeans[cell / hands] - handMeans[cell % hands] + grand)).Sum(), (parts - 1) * (hands - 1));
        var within = new AnovaRow(values.Select((value, i) => Square(value - cellMeans[layout.CellOf[i]])).Sum(), parts * hands * (repeats - 1));
        if (within.Freedom + crossed.Freedom == 0)
            return null;
        if (within.Freedom == 0)
            return Tested(ofPart, ofHand, null, crossed, false, repeats);
        if (crossed.Freedom == 0)
            return Tested(ofPart, ofHand, null, within, false, repeats);
        var interaction = Against(crossed, within);
        var pooled = interaction.P is not { } p || p > PooledAbove;
        return Tested(ofPart, ofHand, interaction, pooled ? new AnovaRow(crossed.SumOfSquares + within.SumOfSquares, crossed.Freedom + within.Freedom) : within, pooled, repeats);

        double[] Means(int[] groupOf, int groups)
        {
            var sums = new double[groups];
            for (var i = 0; i < values.Length; i++)
                sums[groupOf[i]] += values[i];
            return [.. sums.Select(sum => sum * groups / values.Length)];
        }
    }

    private static CrossedAnova Tested(AnovaRow part, AnovaRow hand, AnovaRow? interaction, AnovaRow error, bool pooled, int repeats)
    {
        var under = interaction is null || pooled ? error : interaction;
        return new CrossedAnova { Part = Against(part, under), Operator = Against(hand, under), Interaction = interaction, Error = error, IsPooled = pooled, Repeats = repeats };
    }

    private static AnovaRow Against(AnovaRow row, AnovaRow under)
    {
        if (row.Freedom == 0 || !(under.MeanSquare > 0))
            return row;
        var f = row.MeanSquare / under.MeanSquare;
        return row with { F = f, P = 1 - FisherSnedecor.CDF(row.Freedom, under.Freedom, f) };
    }

    private static double Square(double x) => x * x;
}
