using MathNet.Numerics.Distributions;
using Silkwright.Estimates;
using Silkwright.Gauging;

namespace Silkwright.Tests.Gauging;

public sealed class GaugeStudyTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    /// <summary>AIAG, Measurement Systems Analysis, 4th edition: its study, whose figures public implementations print; to more digits from R.</summary>
    [Fact]
    public void The_published_study_comes_out_as_published()
    {
        var study = GaugeStudy.Of(StudyReferences.Study("aiag"), cancel: Cancel);
        var anova = study.Anova!;
        Assert.Equal(StudyMethod.Anova, study.Method);
        Near(88.361934, anova.Part.SumOfSquares);
        Near(3.167262, anova.Operator.SumOfSquares);
        Near(0.358982, anova.Interaction!.SumOfSquares);
        Assert.Equal(0.43372, anova.Interaction.F!.Value, 1e-5);
        Assert.Equal(0.97411, anova.Interaction.P!.Value, 1e-5);
        Assert.True(anova.IsPooled);
        Assert.Equal(78, anova.Error.Freedom);
        Near(0.0399732763, anova.Error.MeanSquare);
        var figures = study.Figures;
        Near(0.1999331797, figures.RepeatabilityUm.Value);
        Near(0.2268375215, figures.ReproducibilityUm.Value);
        Near(0.3023715223, figures.GaugeUm.Value);
        Near(1.042327494, figures.PartUm.Value);
        Near(1.085299563, figures.TotalUm.Value);
        Near(27.86065088, figures.GaugePercent!.Value);
        Assert.Equal(4.8605, figures.Classes!.Value, 1e-4);
        Assert.Equal(4, figures.Variances.DistinctClasses);
        Assert.Empty(study.Outliers);
    }

    /// <summary>The same study by average and range: K₁ 0.5908, K₂ 0.5231, K₃ 0.3146 are printed to four places, so the figures hold to as many.</summary>
    [Fact]
    public void By_average_and_range_it_has_five_classes_and_the_notes_say_that_the_two_differ()
    {
        var study = GaugeStudy.Of(StudyReferences.Study("aiag"), cancel: Cancel);
        var range = study.Range!;
        Assert.Equal(0.20186, Math.Sqrt(range.Repeatability), 1e-4);
        Assert.Equal(0.22967, Math.Sqrt(range.Operator), 1e-4);
        Assert.Equal(0.30577, Math.Sqrt(range.Gauge), 1e-4);
        Assert.Equal(1.10460, Math.Sqrt(range.Part), 2e-4);
        Assert.Equal(26.678, range.GaugePercent!.Value, 1e-2);
        Assert.Equal(5, range.DistinctClasses);
        Assert.Contains(study.Notes, note => note.Text.Contains("average-and-range", StringComparison.Ordinal) && note.Text.Contains("5 distinct classes", StringComparison.Ordinal));
    }

    /// <summary>R's lme4: References/study.R.</summary>
    [Theory]
    [InlineData("aiag")]
    [InlineData("missing")]
    [InlineData("crossed")]
    public void Restricted_maximum_likelihood_finds_what_lme4_finds(string name)
    {
        var expected = StudyReferences.Figures($"reml {name}");
        var found = GaugeStudy.Of(StudyReferences.Study(name), cancel: Cancel).Reml!;
        double[] figures = [found.Repeatability, found.Operator, found.Interaction, found.Part];
        foreach (var (one, other) in expected.Zip(figures))
            Assert.Equal(one, other, Math.Max(1e-6, 1e-4 * one));
    }

    [Fact]
    public void Readings_that_are_missing_bring_in_the_likelihood_and_are_said_so()
    {
        var study = GaugeStudy.Of(StudyReferences.Study("missing"), cancel: Cancel);
        Assert.Equal(StudyMethod.Reml, study.Method);
        Assert.Null(study.Anova);
        Assert.Equal(study.Reml, study.Figures.Variances);
        Assert.Contains(study.Notes, note => note.Text.Contains("restricted maximum likelihood", StringComparison.Ordinal));
    }

    /// <summary>NIST Statistical Reference Datasets, SiRstv: one-way, five instruments of five readings; certified.</summary>
    [Fact]
    public void A_study_of_one_operator_holds_the_certified_one_way_analysis()
    {
        var study = GaugeStudy.Of([.. Silicon().Select(reading => reading with { Operator = "one" })], cancel: Cancel);
        var anova = study.Anova!;
        Assert.Equal(5.11462616E-02, anova.Part.SumOfSquares, 5e-10);
        Assert.Equal(2.16636560E-01, anova.Error.SumOfSquares, 5e-10);
        Assert.Equal(1.18046237440255, anova.Part.F!.Value, 1e-8);
        Assert.Equal(1.04076068334656E-01, study.Figures.RepeatabilityUm.Value, 1e-10);
    }

    /// <summary>ISO 5725-2:1994 on the same readings, instruments as laboratories: figures by R.</summary>
    [Fact]
    public void A_study_of_one_part_is_an_interlaboratory_precision()
    {
        var study = GaugeStudy.Of([.. Silicon().Select(reading => reading with { Operator = reading.Part, Part = "one" })], cancel: Cancel);
        Assert.Equal(0.1040760683, study.Figures.RepeatabilityUm.Value, 1e-9);
        Assert.Equal(0.00039094748, study.Figures.Variances.Operator, 1e-10);
        Assert.Equal(0.1059376018, study.Figures.GaugeUm.Value, 1e-9);
    }

    /// <summary>R's rstudent of the additive model, the worst taken out, then again: References/study.R spoils two readings of the published study.</summary>
    [Fact]
    public void Spoilt_readings_are_flagged_with_their_studentised_residuals_and_stay_in_the_figures()
    {
        var expected = StudyReferences.Figures("rstudent");
        var study = GaugeStudy.Of(StudyReferences.Study("spoilt"), cancel: Cancel);
        Assert.Equal([(int)expected[0] + 1, (int)expected[2] + 1], study.Outliers.Select(outlier => outlier.Reading.Line));
        Assert.Equal(expected[1], study.Outliers[0].Studentised, 1e-8);
        Assert.Equal(expected[3], study.Outliers[1].Studentised, 1e-8);
        Assert.Equal(90, study.Readings.Count);
        Assert.NotNull(study.WithoutOutliers);
        Assert.True(study.WithoutOutliers.RepeatabilityUm.Value < study.Figures.RepeatabilityUm.Value);
    }

    /// <summary>The exact interval of a standard deviation: any text on the chi-square distribution.</summary>
    [Fact]
    public void The_interval_of_repeatability_is_the_exact_one()
    {
        var figures = GaugeStudy.Of(StudyReferences.Study("aiag"), cancel: Cancel).Figures;
        Assert.Equal(Math.Sqrt(3.117916 / ChiSquared.InvCDF(78, 0.95)), figures.RepeatabilityUm.Low, 1.5e-3);
        Assert.Equal(Math.Sqrt(3.117916 / ChiSquared.InvCDF(78, 0.05)), figures.RepeatabilityUm.High, 1.5e-3);
    }

    /// <summary>Studies drawn here, from sums of normals: the truth must lie inside nine intervals of ten.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Intervals_hold_the_truth_as_often_as_they_say(bool unbalanced)
    {
        var random = new Random(5);
        const int studies = 80;
        int gauge = 0, part = 0, repeat = 0;
        for (var s = 0; s < studies; s++)
        {
            var drawn = Drawn(random, 8, 4, 3, (Repeat: 1, Hand: 1, Part: 4));
            if (unbalanced)
                drawn = [.. drawn.Where((_, i) => i % 7 != 3)];
            var figures = GaugeStudy.Of(drawn, seed: s, cancel: Cancel).Figures;
            gauge += Holds(figures.GaugeUm, Math.Sqrt(2));
            part += Holds(figures.PartUm, 4);
            repeat += Holds(figures.RepeatabilityUm, 1);
        }

        Assert.All(new[] { gauge, part, repeat }, count => Assert.InRange(count / (double)studies, 0.80, 0.99));
    }

    [Fact]
    public void More_readings_are_needed_for_a_narrower_mean_and_the_operators_share_does_not_shrink()
    {
        var needed = GaugeStudy.Of(StudyReferences.Study("aiag"), wantedUm: 0.1, cancel: Cancel).Needed!;
        // 1.645² × 0.2² / 0.1² = 10.8 and 1.645² × 0.3024² / 0.1² = 24.7, by hand
        Assert.Equal(11, needed.OneHand);
        Assert.Equal(25, needed.Hands);
        Assert.True(needed.OneHandAtWorst > needed.OneHand);
    }

    [Fact]
    public void A_study_that_tells_nothing_of_its_scatter_is_refused_with_a_remedy()
    {
        StudyReading[] once = [new("a", "Ines", 60), new("b", "Ines", 62)];
        StudyReading[] same = [new("a", "Ines", 60), new("a", "Ines", 60), new("b", "Ines", 60)];
        Assert.Contains("twice", Assert.Throws<InputProblemException>(() => GaugeStudy.Of(once, cancel: Cancel)).Message, StringComparison.Ordinal);
        Assert.Contains("equal", Assert.Throws<InputProblemException>(() => GaugeStudy.Of(same, cancel: Cancel)).Message, StringComparison.Ordinal);
    }

    private static int Holds(Estimate estimate, double truth) => truth >= estimate.Low && truth <= estimate.High ? 1 : 0;

    private static IReadOnlyList<StudyReading> Drawn(Random random, int parts, int hands, int repeats, (double Repeat, double Hand, double Part) deviations)
    {
        double[] part = [.. Enumerable.Range(0, parts).Select(_ => deviations.Part * Normal())], hand = [.. Enumerable.Range(0, hands).Select(_ => deviations.Hand * Normal())];
        return
        [
            .. from p in Enumerable.Range(0, parts)
               from o in Enumerable.Range(0, hands)
               from r in Enumerable.Range(0, repeats)
               select new StudyReading($"{p}", $"{o}", 60 + part[p] + hand[o] + (deviations.Repeat * Normal())),
        ];

        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
    }

    private static void Near(double expected, double found) => Assert.Equal(expected, found, 1e-6 * Math.Abs(expected) < 1e-6 ? 1e-6 : 1e-6 * Math.Abs(expected));

    private static IEnumerable<StudyReading> Silicon()
    {
        double[][] instruments =
        [
            [196.3052, 196.1240, 196.1890, 196.2569, 196.3403], [196.3042, 196.3825, 196.1669, 196.3257, 196.0422], [196.1303, 196.2005, 196.2889, 196.0343, 196.1811],
            [196.2795, 196.1748, 196.1494, 196.1485, 195.9885], [196.2119, 196.1051, 196.1850, 196.0052, 196.2090],
        ];
        return instruments.SelectMany((readings, i) => readings.Select(reading => new StudyReading($"{i + 1}", "", reading)));
    }
}
