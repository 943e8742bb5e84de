using Silkwright.Emulsion;
using Silkwright.Plans;

namespace Silkwright.Tests.Plans;

/// <summary>Rules of thumb of the trade that the plan must come to by itself. All: common practice, no source.</summary>
public class TradeFactsTests
{
    private static readonly StencilEmulsion ReadyForWater = new()
    {
        Id = "ready to use, made for water",
        Family = EmulsionFamily.Photopolymer,
        Resists = [InkKind.Plastisol, InkKind.WaterBased],
        SolidsPercent = 45,
        Price = new ContainerPrice(1000, 34),
    };

    private static readonly StencilEmulsion TwoPartForWater = new()
    {
        Id = "two-part, made for water",
        Family = EmulsionFamily.Diazo,
        Resists = [InkKind.Plastisol, InkKind.WaterBased],
        SolidsPercent = 36,
        Price = new ContainerPrice(1000, 20),
    };

    private static ColourPlan Plan(InkKind ink, double screensPerDay, long run = 200, Room? room = null, params StencilEmulsion[] emulsions) =>
        Planner.Plan(
            new Job { Name = "job", Date = RandomShops.Today, Run = run, Colours = [new JobColour { Name = "one", Ink = ink }] },
            new Shop { Emulsions = emulsions, ScreensPerDay = screensPerDay, Room = room ?? new Room() }).Colours[0];

    [Fact]
    public void A_shop_that_uses_less_than_a_container_a_month_is_better_served_ready_to_use()
    {
        var slow = Plan(InkKind.WaterBased, 0.3, emulsions: [ReadyForWater, TwoPartForWater]);
        Assert.Equal(ReadyForWater.Id, slow.Emulsion!.Id);
        var twoPart = slow.Beaten.Single();
        Assert.True(twoPart.Cost!.Waste.Value > twoPart.Cost.EmulsionOnScreen.Value, "more is thrown away than used");
        Assert.Contains("thrown away", twoPart.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_busy_shop_throws_little_of_a_two_part_one_away()
    {
        var busy = Plan(InkKind.WaterBased, 30, emulsions: [TwoPartForWater]);
        Assert.True(busy.Cost!.Waste.Value < 0.3 * busy.Cost.EmulsionOnScreen.Value);
    }

    [Fact]
    public void A_plastisol_only_emulsion_is_never_put_under_water_based_or_discharge_ink()
    {
        var plastisolOnly = new StencilEmulsion { Id = "plastisol only", Family = EmulsionFamily.Photopolymer, Resists = [InkKind.Plastisol] };
        foreach (var ink in new[] { InkKind.WaterBased, InkKind.Discharge })
            Assert.Null(Plan(ink, 8, emulsions: [plastisolOnly]).Emulsion);
        Assert.NotNull(Plan(InkKind.Plastisol, 8, emulsions: [plastisolOnly]).Emulsion);
    }

    [Fact]
    public void Half_solids_coat_with_one_stroke_a_side_and_mid_thirties_want_more()
    {
        var high = ReadyForWater with { SolidsPercent = 50 };
        var low = TwoPartForWater with { SolidsPercent = 34 };
        Assert.True(Plan(InkKind.Plastisol, 8, emulsions: [high]).Coat!.Strokes.Count <= 2);
        Assert.InRange(Plan(InkKind.Plastisol, 8, emulsions: [low]).Coat!.Strokes.Count, 3, 4);
    }

    [Fact]
    public void In_a_humid_week_film_sticks_to_the_coat_unless_the_coat_resists_it()
    {
        var humid = new Room { Celsius = 24, HumidityPercent = 88 };
        var dry = new Room { Celsius = 24, HumidityPercent = 38 };
        var resisting = TwoPartForWater with { HumidityResistant = true };
        var wetWeek = Plan(InkKind.Plastisol, 8, room: humid, emulsions: [TwoPartForWater]).Drying!.StickRiskPercent;
        Assert.True(wetWeek.Value > 3 * Plan(InkKind.Plastisol, 8, room: dry, emulsions: [TwoPartForWater]).Drying!.StickRiskPercent.Value);
        Assert.True(wetWeek.Value > 2 * Plan(InkKind.Plastisol, 8, room: humid, emulsions: [resisting]).Drying!.StickRiskPercent.Value);
    }

    [Fact]
    public void A_fast_emulsion_is_ruled_out_in_white_light_where_a_slow_one_may_do()
    {
        var white = new Room { Light = RoomLight.White };
        Assert.Null(Plan(InkKind.Plastisol, 8, room: white, emulsions: [ReadyForWater]).Emulsion);
        Assert.NotNull(Plan(InkKind.Plastisol, 8, room: white, emulsions: [TwoPartForWater]).Emulsion);
    }

    [Fact]
    public void A_see_through_coat_is_named_as_a_help_in_lining_up() =>
        Assert.Contains(
            Plan(InkKind.Plastisol, 8, emulsions: [TwoPartForWater with { SeeThrough = true }]).Because,
            reason => reason.Contains("see-through", StringComparison.Ordinal));

    [Fact]
    public void A_straight_diazo_made_for_water_runs_tens_of_thousands_when_finished_properly()
    {
        var life = Plan(InkKind.WaterBased, 8, run: 40_000, emulsions: [TwoPartForWater]).Life!;
        Assert.True(life.MedianImpressions.High >= 50_000, $"{life.MedianImpressions}");
    }

    [Fact]
    public void The_slower_family_has_the_wider_window()
    {
        var slow = Plan(InkKind.Plastisol, 8, emulsions: [TwoPartForWater]).Exposure!;
        var fast = Plan(InkKind.Plastisol, 8, emulsions: [ReadyForWater]).Exposure!;
        Assert.True(slow.LatitudeStops > fast.LatitudeStops);
    }
}
