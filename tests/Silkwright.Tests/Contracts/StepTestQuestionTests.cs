using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Exposure;

namespace Silkwright.Tests.Contracts;

public sealed class StepTestQuestionTests
{
    /// <summary>7, 5 and 6 µm: 6 µm in the middle.</summary>
    [Fact]
    public void A_coat_measured_on_every_strip_is_taken_and_not_told_as_unknown()
    {
        var reading = Read("seconds,solidStep,eomUm\n42,6,7\n60,7,5\n85,8,6\n");
        Assert.Equal(6, reading.Case.EomUm.Value, 1e-9);
        Assert.Equal(Ground.MeasuredHere, reading.Case.EomUm.Ground);
        Assert.DoesNotContain(reading.Window.Notes, note => note.Text.Contains("not told: 8", StringComparison.Ordinal));
        Assert.Contains(reading.Window.Notes, note => note.Text.Contains("as it was measured on the strips: 6", StringComparison.Ordinal));
    }

    [Fact]
    public void A_coat_measured_on_some_strips_says_on_how_many() => Assert.Contains(
        Read("seconds,solidStep,eomUm\n42,6,7\n60,7,\n85,8,5\n").Window.Notes, note => note.Text.Contains("measured on 2 of 3 strips: 6", StringComparison.Ordinal));

    [Fact]
    public void A_coat_measured_nowhere_is_told_as_unknown_and_one_typed_is_taken()
    {
        Assert.Contains(Read("seconds,solidStep\n60,7\n").Window.Notes, note => note.Text.Contains("not told: 8", StringComparison.Ordinal));
        var typed = Read("seconds,solidStep,eomUm\n60,7,5\n", ("eom", "12um"));
        Assert.Equal(12, typed.Case.EomUm.Value, 1e-9);
        Assert.DoesNotContain(typed.Window.Notes, note => note.Text.StartsWith("Emulsion over mesh", StringComparison.Ordinal));
    }

    [Fact]
    public void A_case_that_does_not_tell_its_coat_has_that_of_its_strips()
    {
        var exposure = ExposureCaseReader.Read(
            """{"mesh": {"countPerCm": 77, "threadUm": 48}, "emulsion": {"family": "dualCure"}, "lamp": {"kind": "ledArray"}, "tests": [{"seconds": 60, "solidStep": 7, "eomUm": 4}]}""", "case.json");
        Assert.Equal(4, exposure.EomUm.Value, 1e-9);
    }

    private static StepTestReading Read(string table, params (string Name, string Text)[] typed)
    {
        var (strips, counts) = StripTable.Read(table, "strips.csv");
        return StepTestQuestion.Answer(new GivenTexts(typed.ToDictionary(given => given.Name, given => given.Text)), strips, counts);
    }
}
