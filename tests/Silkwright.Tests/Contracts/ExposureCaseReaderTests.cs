using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Exposure;

namespace Silkwright.Tests.Contracts;

public sealed class ExposureCaseReaderTests
{
    [Theory]
    [InlineData("", "units")]
    [InlineData(""", "counts": "seconds" """, "units")]
    [InlineData(""", "counts": "units" """, "seconds")]
    public void A_strip_in_what_its_lamp_does_not_count_is_refused(string lamp, string strip)
    {
        var problem = Assert.Single(Assert.Throws<InputProblemException>(() => Read(lamp, strip)).Problems);
        Assert.Equal($"case.json: tests[0].{strip}", problem.Where);
        Assert.Contains("say in lamp", problem.Remedy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "seconds", ExposureCount.Seconds)]
    [InlineData(""", "counts": "units" """, "units", ExposureCount.Units)]
    public void A_strip_in_what_its_lamp_counts_is_told_in_that(string lamp, string strip, ExposureCount counts) =>
        Assert.Equal(counts, ExposureModel.Window(Read(lamp, strip)).Counts);

    [Fact]
    public void A_test_dated_after_its_case_is_refused_where_it_stands()
    {
        var problem = Assert.Single(Assert.Throws<InputProblemException>(() => Dated("2026-06-01", "2026-05-04", "2026-06-02")).Problems);
        Assert.Equal("case.json: tests[1].on", problem.Where);
        Assert.Contains("2026-06-02, after the case, 2026-06-01", problem.What, StringComparison.Ordinal);
        Assert.Contains("Give the day on which it was exposed", problem.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void A_case_dated_before_all_its_tests_is_told_once()
    {
        var problem = Assert.Single(Assert.Throws<InputProblemException>(() => Dated("2025-06-01", "2026-05-04", "2026-06-02")).Problems);
        Assert.Equal("case.json: on", problem.Where);
        Assert.Contains("2026-06-02 or later", problem.Remedy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2026-06-02")]
    [InlineData("2026-06-03")]
    public void A_case_of_the_day_of_its_latest_test_or_later_is_taken(string on) => Assert.Equal(2, Dated(on, "2026-05-04", "2026-06-02").Tests.Count);

    private static ExposureCase Dated(string on, string first, string second) => ExposureCaseReader.Read(
        $$"""{"mesh": {"countPerCm": 77, "threadUm": 48}, "emulsion": {"family": "dualCure"}, "lamp": {"kind": "tubeBank"}, "on": "{{on}}", "tests": [{"seconds": 100, "solidStep": 6, "on": "{{first}}"}, {"seconds": 100, "solidStep": 6, "on": "{{second}}"}]}""",
        "case.json");

    private static ExposureCase Read(string lamp, string strip) => ExposureCaseReader.Read(
        $$"""{"mesh": {"countPerCm": 77, "threadUm": 48}, "emulsion": {"id": "Wren", "family": "dualCure"}, "lamp": {"id": "tubes", "kind": "tubeBank"{{lamp}}}, "tests": [{"{{strip}}": 100, "solidStep": 6}]}""",
        "case.json");
}
