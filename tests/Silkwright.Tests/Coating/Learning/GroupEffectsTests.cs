using Silkwright.Coating.Learning;

namespace Silkwright.Tests.Coating.Learning;

public sealed class GroupEffectsTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    /// <summary>
    /// A group of n readings of one coat keeps n / (n + κ) of what they alone say, κ the same for all groups of the kind: shrinkage of means, any textbook of mixed models
    /// (G. Robinson, Stat. Sci. 6 (1991) 15). So kept / (1 − kept) goes as n, whatever the spreads turn out to be.
    /// </summary>
    [Fact]
    public void What_is_kept_of_a_groups_own_mean_grows_with_its_readings_as_the_textbook_says()
    {
        var coat = new SimulatedCoats(2).Shop("one", 1)[0].Coat;
        (string Hand, int Count, double Um)[] hands = [("Ada", 4, 9), ("Ben", 8, 13), ("Cy", 24, 15)];
        var effects = CoatHierarchy.Of([.. hands.SelectMany(hand => Enumerable.Range(0, hand.Count).Select(i => new CoatRead(coat with { Operator = hand.Hand }, hand.Um + (i % 4 * 0.5) - 0.75)))], cancel: Cancel)
            .Effects().Where(effect => effect.Group == "operator").ToDictionary(effect => effect.Name);
        double[] odds = [.. hands.Select(hand => effects[$"one, {hand.Hand}"]).Select(effect => effect.EomUm / effect.RawUm!.Value).Select(kept => kept / (1 - kept))];

        Assert.Equal(hands.Select(hand => hand.Count), hands.Select(hand => effects[$"one, {hand.Hand}"].Readings));
        Assert.Equal(2, odds[1] / odds[0], 1e-6);
        Assert.Equal(6, odds[2] / odds[0], 1e-6);
    }

    [Fact]
    public void Every_group_is_drawn_from_its_own_mean_towards_none()
    {
        var simulated = new SimulatedCoats(9);
        var effects = CoatHierarchy.Of([.. Enumerable.Range(0, 8).SelectMany(i => simulated.Shop($"shop {i}", 1 + (6 * i)))], cancel: Cancel).Effects();

        Assert.All(effects, effect => Assert.InRange(effect.EomUm / effect.RawUm!.Value, 0, 1));
    }

    /// <summary>A fit without the reading is the oracle; it looks for the spreads anew, so that it need not be equal.</summary>
    [Fact]
    public void What_the_others_say_of_a_reading_is_what_a_fit_without_it_says()
    {
        var reads = new SimulatedCoats(12).Shop("one", 40);
        foreach (var (read, expected) in CoatHierarchy.Of(reads, cancel: Cancel).Held(12))
        {
            var without = CoatHierarchy.Of([.. reads.Where(other => !ReferenceEquals(other, read))], cancel: Cancel).Expect(read.Coat);
            var width = without.High - without.Value;
            Assert.Equal(without.Value, expected.Value, 0.12 * width);
            Assert.InRange((expected.High - expected.Value) / width, 0.9, 1.1);
        }
    }
}
