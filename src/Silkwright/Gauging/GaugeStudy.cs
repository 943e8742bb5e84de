using System.Globalization;
using Silkwright.Estimates;

namespace Silkwright.Gauging;

/// <summary>What a gauge in a shop's hands is worth: repeatability, reproducibility and the parts' own spread.</summary>
/// <remarks>docs/engines/gauging.md.</remarks>
public sealed record GaugeStudy
{
    public const int MostReadings = 2000;

    public required IReadOnlyList<StudyReading> Readings { get; init; }

    /// <summary>Whose figures these are.</summary>
    public required StudyMethod Method { get; init; }

    public required StudyFigures Figures { get; init; }

    /// <summary>Where the study is balanced.</summary>
    public CrossedAnova? Anova { get; init; }

    /// <summary>By restricted maximum likelihood; none where the readings do not scatter enough for it.</summary>
    public VarianceParts? Reml { get; init; }

    /// <summary>By average and range, to be held beside figures made so; where the study is balanced and has repeats.</summary>
    public VarianceParts? Range { get; init; }

    /// <summary>Readings that do not go with the others. They are in all figures but <see cref="WithoutOutliers"/>.</summary>
    public required IReadOnlyList<StudyOutlier> Outliers { get; init; }

    /// <summary>The figures without them; none where there are none.</summary>
    public StudyFigures? WithoutOutliers { get; init; }

    public ReadingsNeeded? Needed { get; init; }

    public required IReadOnlyList<Note> Notes { get; init; }

    /// <param name="readings">Any number of each part by each operator, a part read again at least once.</param>
    /// <param name="wantedUm">Half width of the interval that a mean should have. [µm], above 0</param>
    /// <param name="seed">Of the draws that the intervals rest on.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="InputProblemException">The readings tell nothing of their own scatter, or there are too many.</exception>
    public static GaugeStudy Of(IReadOnlyList<StudyReading> readings, double? wantedUm = null, int seed = 1, CancellationToken cancel = default)
    {
        var layout = new StudyLayout(readings);
        Check(layout);
        var anova = CrossedAnova.Of(layout);
        var reml = Scatters(layout) ? MixedStudy.Of(layout, cancel) : null;
        var figures = FiguresOf(layout, anova, reml, seed);
        var outliers = StudyOutliers.Of(layout);
        var study = new GaugeStudy
        {
            Readings = readings,
            Method = anova is null ? StudyMethod.Reml : StudyMethod.Anova,
            Figures = figures,
            Anova = anova,
            Reml = reml,
            Range = RangeMethod.Of(layout),
            Outliers = outliers,
            WithoutOutliers = Without(layout, outliers, seed, cancel),
            Needed = wantedUm is { } wanted ? ReadingsNeeded.Of(wanted, figures) : null,
            Notes = [],
        };
        return study with { Notes = [.. StudyNotes.Of(study, layout)] };
    }

    private static StudyFigures FiguresOf(StudyLayout layout, CrossedAnova? anova, VarianceParts? reml, int seed)
    {
        if (anova is not null)
            return StudySpread.Of(anova, seed);
        return reml is null
            ? throw Fault("Readings of the same part by the same operator never differ.", "Write down every digit the gauge shows; where it shows no more, its step is all that can be said of it.")
            : StudySpread.Of(
                reml,
                FittedSums.Of(layout) ?? throw Fault("Parts and operators are not tied together: some parts were read by nobody who read the others.", "Let everybody read the same parts, or at least one in common."),
                seed);
    }

    private static StudyFigures? Without(StudyLayout layout, IReadOnlyList<StudyOutlier> outliers, int seed, CancellationToken cancel)
    {
        if (outliers.Count == 0)
            return null;
        var flagged = outliers.Select(outlier => outlier.Reading).ToHashSet(ReferenceEqualityComparer.Instance);
        var left = new StudyLayout([.. layout.Readings.Where(reading => !flagged.Contains(reading))]);
        return left.HasRepeats && Scatters(left) ? FiguresOf(left, CrossedAnova.Of(left), MixedStudy.Of(left, cancel), seed) : null;
    }

    private static void Check(StudyLayout layout)
    {
        if (layout.Readings.Count > MostReadings)
            throw Fault(string.Create(CultureInfo.InvariantCulture, $"There are {layout.Readings.Count} readings."), $"A study takes {MostReadings} at most: leave old ones out.");
        if (layout.Parts.Count < 2 && layout.Operators.Count < 2)
            throw Fault("There is one part and one operator: nothing to hold apart.", "Read several screens or foils, best by several people, each more than once.");
        var additive = layout.Parts.Count + layout.Operators.Count - 1;
        if (!layout.HasRepeats && (layout.Parts.Count < 2 || layout.Operators.Count < 2 || layout.Readings.Count <= additive))
            throw Fault("No part was read twice by the same operator: nothing tells how far the gauge repeats.", "Read each part two or three times, with others between.");
        if (layout.Readings.All(reading => reading.ValueUm == layout.Readings[0].ValueUm))
            throw Fault("All readings are equal.", "Read parts that differ, and write down every digit the gauge shows.");
    }

    private static bool Scatters(StudyLayout layout) => layout.HasRepeats
        ? layout.Readings.Select((reading, i) => (Cell: layout.CellOf[i], reading.ValueUm)).GroupBy(pair => pair.Cell, pair => pair.ValueUm).Any(cell => cell.Max() > cell.Min())
        : CrossedAnova.Of(layout) is { Error.MeanSquare: > 0 } or null;

    private static InputProblemException Fault(string what, string remedy) => new(new Problem(what, "readings", remedy));
}
