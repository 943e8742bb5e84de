using System.Globalization;
using Silkwright.Contracts;
using Silkwright.Emulsion;
using Silkwright.Exposure;
using Silkwright.Plans;

namespace Silkwright.Tests.Plans;

/// <summary>What a shop tested after the day of a job serves it as if it had been tested on that day.</summary>
public sealed class ShopStepTestsTests
{
    private static readonly DateOnly Planned = new(2026, 6, 1);

    private static readonly Shop Untested = new()
    {
        Meshes = [new(61, 64)],
        Emulsions = [new() { Id = "Wren", Family = EmulsionFamily.DualCure }, new() { Id = "Plover", Family = EmulsionFamily.Photopolymer }],
        Lamps = [new Lamp { Id = "array", Kind = LampKind.LedArray }],
    };

    [Theory]
    [InlineData("2026-06-02")]
    [InlineData("2026-06-02", "2026-11-04")]
    public void A_test_of_after_its_day_counts_as_of_that_day_and_is_told(params string[] days)
    {
        var (later, then) = (Planner.Plan(Job, With([.. days.Select(day => (DateOnly?)Day(day))])), Planner.Plan(Job, With(Planned)));
        var note = Assert.Single(later.Notes.Except(then.Notes)).Text;
        Assert.Contains("2026-06-01", note, StringComparison.Ordinal);
        Assert.All(days, day => Assert.Contains(day, note, StringComparison.Ordinal));
        Assert.True(later.Colours[0].Exposure!.IsMeasured);
        if (days.Length == 1)
            Assert.Equal(Text(then), Text(later with { Notes = then.Notes }));
    }

    [Theory]
    [InlineData("2026-06-01")]
    [InlineData("2026-05-31")]
    [InlineData(null)]
    public void A_test_of_its_day_or_before_or_without_a_day_is_not_told_as_later(string? day)
    {
        var plan = Planner.Plan(Job, With(day is null ? null : Day(day)));
        Assert.True(plan.Colours[0].Exposure!.IsMeasured);
        Assert.DoesNotContain(plan.Notes, note => note.Text.Contains("after the day this is for", StringComparison.Ordinal));
    }

    private static Job Job => new()
    {
        Name = "Kite",
        Date = Planned,
        Run = 300,
        Colours = [new JobColour { Name = "White", Ink = InkKind.Plastisol, Kind = WorkKind.LeftChestSpot }],
    };

    /// <summary>Both emulsions tested on each day, at exposures that no usual lamp of the kind needs, so that taking the test in is seen.</summary>
    private static Shop With(params DateOnly?[] days) => Untested with
    {
        ExposureReadings =
        [
            .. from day in days
               from emulsion in Untested.Emulsions
               select new ExposureReading { EmulsionId = emulsion.Id, LampId = "array", Test = new StepTest(90, 5, SqueegeeSideSoft: true) { On = day } },
        ],
    };

    private static DateOnly Day(string day) => DateOnly.Parse(day, CultureInfo.InvariantCulture);

    private static string Text(StencilPlan plan) => PlanDocument.Of(plan).ToJsonString();
}
