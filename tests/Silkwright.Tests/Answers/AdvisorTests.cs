using Silkwright.Answers;
using Silkwright.Contracts;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Plans;

namespace Silkwright.Tests.Answers;

public class AdvisorTests
{
    private static readonly DateOnly Day = new(2026, 11, 25);

    private static EmulsionAnswer Ask(params (string Field, string Text)[] given) => EmulsionQuestion.Answer(
        new GivenTexts(given.ToDictionary(g => g.Field, g => g.Text)), new Shop(), Day);

    private static EmulsionAnswer AskShop(Shop shop, params (string Field, string Text)[] given) => EmulsionQuestion.Answer(
        new GivenTexts(given.ToDictionary(g => g.Field, g => g.Text)), shop, Day);

    [Fact]
    public void Ink_and_run_are_enough()
    {
        var answer = Ask(("ink", "plastisol"), ("run", "300"));
        Assert.NotNull(answer.Plan.Emulsion);
        Assert.Contains("a run of 300 pieces", answer.Facts);
        Assert.Contains(answer.Assumed, note => note.Text.Contains("No emulsions given", StringComparison.Ordinal));
    }

    /// <summary>Two of the usual kinds cost the same here, and no stencil lasts ten million impressions: neither leaves an empty bracket.</summary>
    [Theory]
    [InlineData("300")]
    [InlineData("10000000")]
    public void No_sentence_holds_an_empty_bracket_or_begins_small(string run)
    {
        var answer = Ask(("ink", "plastisol"), ("run", run));
        Assert.All(answer.Plan.Because, sentence =>
        {
            Assert.DoesNotContain("()", sentence, StringComparison.Ordinal);
            Assert.False(char.IsLower(sentence[0]), sentence);
        });
    }

    [Fact]
    public void What_was_told_of_the_room_is_not_said_to_be_assumed()
    {
        var assumed = Ask(("ink", "plastisol"), ("run", "300"), ("humidity", "75%")).Assumed;
        Assert.DoesNotContain(assumed, note => note.Text.Contains("75 %", StringComparison.Ordinal));
        Assert.Contains(assumed, note => note.Text == "Air of the room not read: 23 °C is assumed.");
    }

    /// <summary>A pace that SHOP.json refuses is refused when typed: both doors take 0.01 to 5000 screens a day.</summary>
    [Theory]
    [InlineData("0.001")]
    [InlineData("5001")]
    public void A_pace_that_no_shop_has_is_told(string pace) =>
        Assert.Equal("pace", Assert.Single(Assert.Throws<InputProblemException>(() => Ask(("ink", "plastisol"), ("run", "300"), ("pace", pace))).Problems).Where);

    [Fact]
    public void Of_a_long_list_of_emulsions_the_first_are_named_and_the_rest_counted()
    {
        var shop = new Shop { Emulsions = [.. Enumerable.Range(1, 30).Select(i => new StencilEmulsion { Id = $"kind {i}", Family = EmulsionFamily.DualCure })] };
        var told = Assert.Single(AskShop(shop, ("ink", "plastisol"), ("run", "300")).Facts, fact => fact.StartsWith("emulsions weighed", StringComparison.Ordinal));
        Assert.EndsWith("kind 12 and 18 others", told, StringComparison.Ordinal);
    }

    /// <summary>A plastisol-only emulsion breaks down in water-based and discharge ink. Common practice, no source.</summary>
    [Theory]
    [InlineData("water-based")]
    [InlineData("discharge")]
    public void An_emulsion_for_plastisol_alone_is_ruled_out_of_inks_with_water(string ink) =>
        Assert.Contains(Ask(("ink", ink), ("run", "300")).Plan.Beaten, beaten => beaten.RuledOut && beaten.Emulsion.Id == "a photopolymer for plastisol");

    /// <summary>
    /// A shop that uses less than a container a month throws much of a two-part one away and is better served by a ready-to-use one
    /// made for its ink. Common practice, no source.
    /// </summary>
    [Fact]
    public void With_few_screens_ready_to_use_is_cheaper_and_with_many_the_two_part()
    {
        var shop = new Shop
        {
            Emulsions =
            [
                new() { Id = "two-part", Family = EmulsionFamily.DualCure, Price = new ContainerPrice(1000, 15) },
                new() { Id = "ready", Family = EmulsionFamily.Photopolymer, Price = new ContainerPrice(1000, 160) },
            ],
        };
        var answer = AskShop(shop, ("ink", "plastisol"), ("run", "200"), ("pace", "4"));
        var pace = answer.Curves.Single(curve => curve.Axis == TurningAxis.ScreensPerDay);
        var turn = Assert.Single(pace.Turns);
        Assert.Equal("ready", turn.Below);
        Assert.Equal("two-part", turn.Above);
        Assert.Equal("ready", AskShop(shop, ("ink", "plastisol"), ("run", "200"), ("pace", Text(turn.At / 1.3))).Plan.Emulsion!.Id);
        Assert.Equal("two-part", AskShop(shop, ("ink", "plastisol"), ("run", "200"), ("pace", Text(turn.At * 1.3))).Plan.Emulsion!.Id);
    }

    /// <summary>What the answer says of a turn is what the answer beyond it says of itself.</summary>
    [Fact]
    public void Beyond_a_turn_the_answer_is_the_other_one()
    {
        var answer = Ask(("ink", "water-based"), ("run", "2000"), ("pace", "3"));
        var turn = answer.Curves.Single(curve => curve.Axis == TurningAxis.Run).Turns.First(t => t.At < 2000);
        Assert.Equal(turn.Above, answer.Plan.Emulsion!.Id);
        var below = Ask(("ink", "water-based"), ("run", Math.Floor(turn.At * 0.97).ToString("0", System.Globalization.CultureInfo.InvariantCulture)), ("pace", "3"));
        Assert.Equal(turn.Below, below.Plan.Emulsion!.Id);
        Assert.Contains(answer.StopIf, sentence => sentence.Contains($"{turn.Below} costs less", StringComparison.Ordinal));
    }

    [Fact]
    public void The_parts_of_a_cost_make_its_total()
    {
        foreach (var contender in Ask(("ink", "discharge"), ("run", "500")).Contenders)
        {
            var cost = contender.Cost;
            var parts = cost.EmulsionOnScreen.Value + cost.Coating.Value + cost.Drying.Value + cost.Exposing.Value + cost.Making.Value
                + cost.Finish.Value + cost.Reclaim.Value + cost.Waste.Value + cost.Remakes.Value;
            Assert.Equal(cost.Total.Value, parts, 6);
        }
    }

    /// <summary>Slow emulsions forgive stray white light; the fastest do not. Common practice, no source.</summary>
    [Fact]
    public void A_slow_emulsion_may_lie_longer_in_the_rooms_light()
    {
        var answer = Ask(("ink", "plastisol"), ("run", "300"), ("light", "filtered"));
        var minutes = answer.Handling.ToDictionary(h => h.Emulsion, h => h.RoomLightMinutes!.Value);
        Assert.True(minutes["a diazo made for water"] > 2 * minutes["a photopolymer for plastisol"]);
    }

    [Fact]
    public void Where_none_may_be_used_the_nearest_way_out_is_named()
    {
        var shop = new Shop { Emulsions = [new() { Id = "only", Family = EmulsionFamily.Photopolymer, Resists = [InkKind.Plastisol] }] };
        var answer = AskShop(shop, ("ink", "discharge"), ("run", "100"));
        Assert.Null(answer.Plan.Emulsion);
        Assert.NotNull(answer.Plan.NearestFix);
        Assert.Null(answer.Comparison);
        Assert.Empty(answer.Curves);
    }

    [Fact]
    public void Everything_wrong_with_a_question_is_told_at_once()
    {
        var fault = Assert.Throws<InputProblemException>(() => Ask(("ink", "soup"), ("run", "-3"), ("humidity", "150%")));
        Assert.Equal(3, fault.Problems.Count);
    }

    private static string Text(double value) => value.ToString("0.####", System.Globalization.CultureInfo.InvariantCulture);
}
