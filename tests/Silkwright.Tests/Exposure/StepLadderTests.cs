using Silkwright.Contracts;
using Silkwright.Emulsion;
using Silkwright.Exposure;

namespace Silkwright.Tests.Exposure;

public class StepLadderTests
{
    private static readonly ExposureCase Case = ExposureCases.Usual(EmulsionFamily.DualCure, LampKind.LedArray) with { FinestGapUm = null };

    /// <summary>Nothing is off by more than all of itself downwards.</summary>
    [Fact]
    public void A_ladder_that_tells_next_to_nothing_says_so_as_a_factor()
    {
        var plan = StepLadder.Plan(Case, new LadderWish { Around = 1e7 }) with { ExpectedHalf = (10 - 0.1) / 2 };
        var why = LadderDocument.Why(plan);
        Assert.Contains("within a factor of 10 either way", why, StringComparison.Ordinal);
        Assert.Contains("For 25 % make another", why, StringComparison.Ordinal);
    }

    [Fact]
    public void Strips_climb_by_even_ratios_over_what_is_believed()
    {
        var plan = StepLadder.Plan(Case, new LadderWish { SmallestSetting = 0.01 });
        var ratios = plan.Amounts.Zip(plan.Amounts.Skip(1), (low, high) => high / low).ToArray();
        Assert.All(ratios, ratio => Assert.Equal(plan.Ratio, ratio, 0.02));
        var before = ExposureModel.Window(Case);
        Assert.True(plan.Amounts[0] <= before.Least.Low * 1.02);
        Assert.True(plan.Amounts[^1] >= before.Aim!.Value);
    }

    [Fact]
    public void Less_certainty_asks_fewer_strips_and_none_more_than_fit()
    {
        var rough = StepLadder.Plan(Case, new LadderWish { WantedHalf = 0.5 });
        var fine = StepLadder.Plan(Case, new LadderWish { WantedHalf = 0.05 });
        Assert.True(rough.IsEnough);
        Assert.True(rough.Amounts.Count < fine.Amounts.Count);
        Assert.False(fine.IsEnough);
        Assert.Equal(StepLadder.MostStrips, fine.Amounts.Count);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(5)]
    public void A_shutter_is_set_only_to_what_it_can_be_set_to(double smallest)
    {
        var plan = StepLadder.Plan(Case, new LadderWish { SmallestSetting = smallest });
        Assert.All(plan.Amounts, amount => Assert.Equal(0, amount / smallest % 1, 1e-9));
        Assert.Equal(plan.Amounts.Count, plan.Amounts.Distinct().Count());
        Assert.Equal(plan.Amounts[^1], plan.Increments.Sum(), 1e-9);
    }

    /// <summary>Every step is as near to its setting as a multiple can be; the steps of the strips and those told as shared are the nine wanted, and light as much weaker parts them all.</summary>
    [Fact]
    public void Steps_that_fall_on_one_setting_are_told_with_what_to_do()
    {
        var plan = StepLadder.Plan(Case, new LadderWish { Around = 12, SmallestSetting = 5, WantedHalf = 0.05 });
        Assert.NotEmpty(plan.SharedSettings);
        Assert.All(plan.SharedSettings, shared => Assert.All(shared.Steps, step => Assert.True(Math.Abs(step - shared.Amount) <= 2.5 || (shared.Amount == 5 && step < 2.5))));
        Assert.Equal(StepLadder.MostStrips, plan.Amounts.Count + plan.SharedSettings.Sum(shared => shared.Steps.Count - 1));
        var note = Assert.Single(LadderDocument.NotesOn(plan), note => note.Text.Contains("finer than the machine's settings, 5 s apart", StringComparison.Ordinal)).Text;
        Assert.Contains($"fall on {plan.SharedSettings[0].Amount:0} s", note, StringComparison.Ordinal);
        Assert.Contains("coarser ladder; or weaken the light", note, StringComparison.Ordinal);
        Assert.Contains("as many as the machine can tell apart", LadderDocument.Why(plan), StringComparison.Ordinal);
        Assert.Empty(StepLadder.Plan(Case, new LadderWish { Around = 12 * plan.WeakerLight, SmallestSetting = 5, WantedHalf = 0.05 }).SharedSettings);
    }

    [Fact]
    public void A_counter_of_whole_units_says_so_in_units_and_a_fine_shutter_says_nothing()
    {
        var units = Case with { Lamp = Case.Lamp with { Counts = ExposureCount.Units } };
        var note = Assert.Single(LadderDocument.NotesOn(StepLadder.Plan(units, new LadderWish { Around = 4 })), note => note.Text.Contains("finer than", StringComparison.Ordinal));
        Assert.Contains("1 unit apart", note.Text, StringComparison.Ordinal);
        var fine = StepLadder.Plan(Case, new LadderWish { SmallestSetting = 0.01 });
        Assert.Empty(fine.SharedSettings);
        Assert.DoesNotContain(LadderDocument.NotesOn(fine), told => told.Text.Contains("finer than", StringComparison.Ordinal));
    }

    [Fact]
    public void What_the_shop_exposes_now_is_the_middle()
    {
        var plan = StepLadder.Plan(Case, new LadderWish { Around = 200 });
        Assert.True(plan.Amounts[0] < 200 && 200 < plan.Amounts[^1]);
        var units = Case with { Lamp = Case.Lamp with { Counts = ExposureCount.Units } };
        Assert.Throws<ArgumentOutOfRangeException>(() => StepLadder.Plan(units, new LadderWish()));
        Assert.Equal(ExposureCount.Units, StepLadder.Plan(units, new LadderWish { Around = 200 }).Counts);
    }

    /// <summary>The promise is kept: over 200 simulated shops the middle interval is as wide as told, to three points.</summary>
    [Fact]
    public void The_certainty_it_tells_is_what_shops_get()
    {
        var plan = StepLadder.Plan(Case, new LadderWish { MeasuresCoat = true });
        var before = ExposureModel.Window(Case);
        var halves = Enumerable.Range(0, 200).AsParallel().Select(seed =>
        {
            var shop = new SimulatedShop(seed, before.Least.Value, before.Most.Value, Case.FinestLineUm!.Value);
            return ExposureModel.Window(Case with { Tests = shop.Test(plan.Amounts, new DateOnly(2026, 5, 4)) }).Aim is { } aim ? (aim.High - aim.Low) / 2 / aim.Value : 1;
        }).Order().ToArray();
        Assert.Equal(plan.ExpectedHalf, halves[100], 0.03);
    }
}
