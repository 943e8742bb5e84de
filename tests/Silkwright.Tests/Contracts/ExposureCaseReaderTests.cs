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

    private static ExposureCase Read(string lamp, string strip) => ExposureCaseReader.Read(
        $$"""{"mesh": {"countPerCm": 77, "threadUm": 48}, "emulsion": {"id": "Wren", "family": "dualCure"}, "lamp": {"id": "tubes", "kind": "tubeBank"{{lamp}}}, "tests": [{"{{strip}}": 100, "solidStep": 6}]}""",
        "case.json");
}
