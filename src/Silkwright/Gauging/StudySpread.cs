using MathNet.Numerics.Distributions;
using Silkwright.Estimates;

namespace Silkwright.Gauging;

/// <summary>Puts intervals about a study's variances.</summary>
/// <remarks>
/// Generalised intervals: each mean square's true value is drawn from its chi-square and followed into every figure (S. Weerahandi, J. Am. Stat. Assoc. 88 (1993) 899;
/// M. Hamada and S. Weerahandi, J. Quality Technology 32 (2000) 241). Where the study is unbalanced the mean squares are those of <see cref="FittedSums"/>.
/// </remarks>
internal static class StudySpread
{
    private const int Draws = 5000;
    private const double Tail = (100 - Estimate.UsualCoverPercent) / 200;

    public static StudyFigures Of(CrossedAnova anova, int seed) => Figures(
        anova.Variances,
        [anova.Part, anova.Operator, anova.Interaction ?? new AnovaRow(0, 0), anova.Error],
        squares => anova.VariancesOf(squares[0], squares[1], squares[2], squares[3]),
        anova is { Interaction: not null, IsPooled: false },
        seed);

    /// <param name="found">The variances by restricted maximum likelihood.</param>
    /// <param name="sums">Of the same readings.</param>
    /// <param name="seed">Of the draws.</param>
    public static StudyFigures Of(VarianceParts found, FittedSums sums, int seed) => Figures(
        found, [sums.Part, sums.Operator, sums.Interaction, sums.Error], squares => sums.VariancesOf(squares[0], squares[1], squares[2], squares[3]),
        sums.Interaction.Freedom > 0, seed);

    private static StudyFigures Figures(VarianceParts found, AnovaRow[] rows, Func<double[], VarianceParts> of, bool interaction, int seed)
    {
        var random = new Random(seed);
        var drawn = new VarianceParts[Draws];
        for (var i = 0; i < Draws; i++)
            drawn[i] = of(Array.ConvertAll(rows, row => row.Freedom > 0 ? row.SumOfSquares / ChiSquared.Sample(random, row.Freedom) : 0));
        return new StudyFigures
        {
            Variances = found,
            RepeatabilityUm = Deviation(parts => parts.Repeatability),
            OperatorUm = Deviation(parts => parts.Operator),
            InteractionUm = interaction ? Deviation(parts => parts.Interaction) : null,
            ReproducibilityUm = Deviation(parts => parts.Reproducibility),
            GaugeUm = Deviation(parts => parts.Gauge),
            PartUm = Deviation(parts => parts.Part),
            TotalUm = Deviation(parts => parts.Total),
            GaugePercent = Drawn(parts => parts.GaugePercent),
            Classes = Drawn(parts => parts.Classes),
        };

        Estimate Deviation(Func<VarianceParts, double> variance)
        {
            var values = Sorted(drawn.Select(variance));
            return About(Math.Sqrt(variance(found)), Math.Sqrt(At(values, Tail)), Math.Sqrt(At(values, 1 - Tail)));
        }

        Estimate? Drawn(Func<VarianceParts, double?> figure)
        {
            if (figure(found) is not { } value)
                return null;
            var values = Sorted(drawn.Select(figure).OfType<double>());
            return About(value, At(values, Tail), At(values, 1 - Tail));
        }
    }

    private static Estimate About(double value, double low, double high) => new(value, Math.Min(low, value), Math.Max(high, value), Ground.MeasuredHere);

    private static double[] Sorted(IEnumerable<double> values) => [.. values.Order()];

    private static double At(double[] sorted, double share) => sorted.Length == 0 ? 0 : sorted[(int)Math.Round(share * (sorted.Length - 1))];
}
