using Silkwright.Emulsion;
using Silkwright.Exposure;

namespace Silkwright.Tests.Exposure;

/// <summary>Strips that cannot all be read right: more light hardens no less, whatever the coat.</summary>
public sealed class StripContradictionsTests
{
    [Fact]
    public void A_wedge_that_falls_with_more_light_is_told_with_both_strips() =>
        Assert.Contains("20 s showed step 7 solid and 10 s step 9", Assert.Single(Told(new StepTest(10, 9), new StepTest(20, 7), new StepTest(40, 5))), StringComparison.Ordinal);

    [Fact]
    public void A_squeegee_side_that_softens_with_more_light_is_told() =>
        Assert.Contains("soft at 40 s and firm at 20 s", Assert.Single(Told(new StepTest(20, 7, false), new StepTest(40, 9, true))), StringComparison.Ordinal);

    [Fact]
    public void A_soft_squeegee_side_under_a_wedge_hard_to_the_end_is_told() =>
        Assert.Contains("step 11", Assert.Single(Told(new StepTest(10, 7, true), new StepTest(20, 9, true), new StepTest(40, 11, true))), StringComparison.Ordinal);

    /// <summary>The case's finest line and gap are 100 µm.</summary>
    [Fact]
    public void A_line_that_opens_and_a_wall_that_goes_with_more_light_are_told()
    {
        Assert.Contains("line was lost at 20 s and held at 40 s", Assert.Single(Told(new StepTest(20, 7, FinestLineUm: 120), new StepTest(40, 9, FinestLineUm: 80))), StringComparison.Ordinal);
        Assert.Contains("gap was held at 20 s and lost at 40 s", Assert.Single(Told(new StepTest(20, 7, FinestGapUm: 80), new StepTest(40, 9, FinestGapUm: 120))), StringComparison.Ordinal);
        Assert.Empty(Told(new StepTest(20, 7, FinestLineUm: 150), new StepTest(40, 9, FinestLineUm: 120)));
    }

    [Fact]
    public void Strips_a_reader_may_well_see_so_are_silent()
    {
        Assert.Empty(Told(new StepTest(10, 5, true), new StepTest(14, 4, true), new StepTest(20, 7, true), new StepTest(28, 6, false)));
        Assert.Empty(Told(new StepTest(20, 9) { On = new DateOnly(2026, 11, 2) }, new StepTest(40, 5) { On = new DateOnly(2026, 11, 9) }));
        Assert.Empty(Told(new StepTest(20, 9), new StepTest(40, 5, Damp: true)));
    }

    private static IEnumerable<string> Told(params StepTest[] strips) =>
        ExposureModel.Window(ExposureCases.Usual(EmulsionFamily.DualCure, LampKind.LedArray) with { Tests = strips }).Notes.Select(note => note.Text).Where(text => text.Contains("contradict", StringComparison.Ordinal));
}
