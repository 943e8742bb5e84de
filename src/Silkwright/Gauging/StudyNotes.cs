using System.Globalization;
using Silkwright.Estimates;

namespace Silkwright.Gauging;

/// <summary>What belongs beside a study's figures: the method, where others differ, and what the study is too small for.</summary>
internal static class StudyNotes
{
    /// <summary>Fewer tell little. AIAG, Measurement Systems Analysis, 4th edition, asks for more.</summary>
    private const int UsualOperators = 3;
    private const int UsualParts = 5;

    public static IEnumerable<Note> Of(GaugeStudy study, StudyLayout layout)
    {
        yield return new Note(MethodOf(study, layout));
        if (study.Anova is { Interaction: { P: { } p } interaction } anova)
        {
            yield return new Note(anova.IsPooled
                ? Text($"Operators do not read some parts otherwise than others (F {interaction.F:0.###}, chance {p:0.###}, above {CrossedAnova.PooledAbove}): the interaction is pooled with repeatability.")
                : Text($"Operators read some parts otherwise than others (F {interaction.F:0.###}, chance {p:0.###}): the interaction is kept."));
        }

        foreach (var (name, other) in new[] { ("Restricted maximum likelihood", study.Method == StudyMethod.Reml ? null : study.Reml), ("The average-and-range method", study.Range) })
        {
            if (other?.DistinctClasses is { } classes && study.Figures.Variances.DistinctClasses is { } own && classes != own)
                yield return new Note(Text($"{name} finds {classes} distinct classes on the same readings, {Sd(other.Gauge)} µm for the gauge and {Sd(other.Part)} µm for the parts; the figures here are the {Named(study.Method)}'s, {own}."));
        }

        if (study.Outliers.Count > 0)
            yield return new Note(Text($"{study.Outliers.Count} flagged: {(study.Outliers.Count == 1 ? "it is" : "they are")} in the figures; those without stand beside them."));
        if (layout.Operators.Count < 2)
            yield return new Note("One operator: nothing can be said of what another hand adds.");
        else if (layout.Operators.Count < UsualOperators)
            yield return new Note("Two operators tell little of operators in general: the interval says how little.");
        if (layout.Parts.Count < UsualParts)
            yield return new Note(Text($"{layout.Parts.Count} {(layout.Parts.Count == 1 ? "part tells nothing" : "parts tell little")} of how parts differ. Choose them over the range the shop coats."));
        if (study.Figures.RepeatabilityUm.Value == 0)
            yield return new Note("Repeats never differ: the gauge's step hides how far it repeats.");
    }

    private static string MethodOf(GaugeStudy study, StudyLayout layout) => study.Method == StudyMethod.Anova
        ? $"Everybody read every part equally often: crossed analysis of variance. Intervals hold 90 % (generalised, Hamada and Weerahandi 2000)."
        : Text($"{layout.CellCounts.Count(count => count == 0)} of {layout.CellCounts.Length} pairs of part and operator have no reading, others unequally many: restricted maximum likelihood. Intervals hold 90 % (generalised, on Henderson's sums of squares).");

    private static string Named(StudyMethod method) => method == StudyMethod.Anova ? "analysis of variance" : "likelihood";

    private static string Sd(double variance) => Math.Sqrt(variance).ToString("0.###", CultureInfo.InvariantCulture);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
