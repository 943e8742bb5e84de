using Silkwright.Gauging;

namespace Silkwright.Tests.Gauging;

/// <summary>Coats drawn here along the days, with a truth that is known.</summary>
public sealed class CoatHistoryTests
{
    private static readonly DateOnly Start = new(2026, 11, 2);

    [Fact]
    public void A_new_trough_that_coats_four_micrometres_thicker_is_told_with_its_day()
    {
        var random = new Random(3);
        var history = CoatHistory.Of([.. Enumerable.Range(0, 24).Select(i => Reading(i, (i >= 14 ? 16 : 12) + Normal(random)) with { Trough = i >= 14 ? "new" : "old", Operator = i % 2 == 0 ? "Ines" : "Bram" })]);
        var shop = history.Charts.Single(chart => chart.Grouping == ChartGrouping.Shop);
        Assert.True(shop.HasChanged);
        Assert.Equal(Start.AddDays(14), shop.Since);
        Assert.InRange(4, shop.ChangeUm!.Low, shop.ChangeUm.High);
        Assert.NotNull(shop.SignalOn);
        var trough = history.Differences.Single(difference => difference.Name == "new");
        Assert.True(trough.ChancePercent > 99);
        Assert.Equal(Start.AddDays(14), trough.Since);
        Assert.InRange(4, trough.ThickerUm.Low, trough.ThickerUm.High);
        Assert.Empty(trough.AlsoIs);
    }

    [Fact]
    public void Where_the_trough_came_with_its_own_operator_the_two_are_not_told_apart()
    {
        var random = new Random(4);
        var history = CoatHistory.Of([.. Enumerable.Range(0, 20).Select(i => Reading(i, (i >= 10 ? 16 : 12) + Normal(random)) with { Trough = i >= 10 ? "new" : "old", Operator = i >= 10 ? "Bram" : "Ines" })]);
        Assert.Contains("operator Bram", history.Differences.Single(difference => difference.Name == "new").AlsoIs);
    }

    /// <summary>A shop that stays as it is: the chance of a change is thought of as even before, and must mostly fall; few charts may cry.</summary>
    [Fact]
    public void A_steady_shop_seldom_hears_of_a_change()
    {
        var random = new Random(8);
        int changed = 0, signalled = 0;
        for (var shop = 0; shop < 200; shop++)
        {
            var chart = CoatHistory.Of([.. Enumerable.Range(0, 20).Select(i => Reading(i, 12 + Normal(random)))]).Charts[0];
            changed += chart.HasChanged ? 1 : 0;
            signalled += chart.SignalOn is null ? 0 : 1;
        }

        Assert.InRange(changed, 0, 10);
        // one false alarm in some 500 values, and fourteen values a chart: six charts of 200
        Assert.InRange(signalled, 0, 14);
    }

    /// <summary>Of changes told with a chance of 80 % and more, about as many as they say are real: half the shops drawn here have one.</summary>
    [Fact]
    public void The_chance_of_a_change_means_what_it_says()
    {
        var random = new Random(9);
        double told = 0, real = 0, said = 0;
        for (var shop = 0; shop < 600; shop++)
        {
            var change = shop % 2 == 0;
            var (at, shift, deviation) = (1 + random.Next(19), 2 * Normal(random), Math.Exp(0.3 * Normal(random)));
            var chart = CoatHistory.Of([.. Enumerable.Range(0, 20).Select(i => Reading(i, 12 + (deviation * (Normal(random) + (change && i >= at ? shift : 0)))))]).Charts[0];
            if (chart.ChancePercent is not (> 80))
                continue;
            told++;
            real += change ? 1 : 0;
            said += chart.ChancePercent!.Value / 100;
        }

        Assert.InRange(real / told, (said / told) - 0.06, 1);
    }

    [Fact]
    public void Coats_of_other_recipes_are_not_held_against_each_other()
    {
        var history = CoatHistory.Of([.. Enumerable.Range(0, 20).Select(i => Reading(i, i % 2 == 0 ? 8 : 20) with { Recipe = i % 2 == 0 ? "140/34 P S" : "43/80 P P S" })]);
        Assert.False(history.Charts.Single(chart => chart.Grouping == ChartGrouping.Shop).HasChanged);
    }

    private static CoatedReading Reading(int day, double eomUm) => new(Start.AddDays(day), eomUm) { Emulsion = "Wren 47", Recipe = "77/48 P S" };

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
