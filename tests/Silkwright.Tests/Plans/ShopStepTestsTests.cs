using System.Globalization;
using Silkwright.Answers;
using Silkwright.Contracts;
using Silkwright.Emulsion;
using Silkwright.Exposure;
using Silkwright.Plans;

namespace Silkwright.Tests.Plans;

/// <summary>A plan knows the step tests made by its day and no later ones: with those it is, number by number, the plan of a shop that has not made them yet.</summary>
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
    public void A_test_of_after_its_day_is_left_out_and_told(params string[] days)
    {
        var shop = With([.. days.Select(day => (DateOnly?)Day(day))]);
        var (plan, before) = (Planner.Plan(Job, shop), Planner.Plan(Job, Untested));
        var note = Assert.Single(plan.Notes.Except(before.Notes)).Text;
        Assert.Contains("2026-06-01", note, StringComparison.Ordinal);
        Assert.All(days, day => Assert.Contains(day, note, StringComparison.Ordinal));
        Assert.Equal(Text(before), Text(plan with { Notes = before.Notes }));

        var answer = Advisor.Answer(Job, Job.Colours[0], shop);
        Assert.Contains(answer.Assumed, assumed => assumed.Text == note);
        Assert.Equal(before.Colours[0].Exposure!.Least, answer.Plan.Exposure!.Least);
    }

    [Theory]
    [InlineData("2026-06-01")]
    [InlineData("2026-05-31")]
    [InlineData(null)]
    public void A_test_of_its_day_or_before_or_without_a_day_counts(string? day)
    {
        var plan = Planner.Plan(Job, With(day is null ? null : Day(day)));
        Assert.True(plan.Colours[0].Exposure!.IsMeasured);
        Assert.DoesNotContain(plan.Notes, note => note.Text.Contains("left out", StringComparison.Ordinal));
    }

    [Fact]
    public void Tests_of_before_count_where_later_ones_do_not()
    {
        var (one, both) = (Planner.Plan(Job, With(Day("2026-05-04"))), Planner.Plan(Job, With(Day("2026-05-04"), Day("2026-06-02"))));
        Assert.Equal(one.Colours[0].Exposure!.Aim, both.Colours[0].Exposure!.Aim);
        Assert.Single(both.Notes.Except(one.Notes));
    }

    /// <summary>A shelf is chosen for months to come out of jobs of months past.</summary>
    [Fact]
    public void What_a_shelf_is_weighed_by_takes_tests_of_any_day()
    {
        var (untested, later) = (ColourCosts.Of(Job, Job.Colours[0], Untested), ColourCosts.Of(Job, Job.Colours[0], With(Day("2026-06-02"))));
        Assert.NotEqual(Wren(untested).Cost, Wren(later).Cost);

        static ColourCost Wren(IReadOnlyList<ColourCost> costs) => costs.Single(cost => cost.Emulsion == "Wren");
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
