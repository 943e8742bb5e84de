using Silkwright.Coating.Learning;

namespace Silkwright.Tests.Coating.Learning;

/// <summary>What shops teach each other without their readings. The fit of all readings at once, and simulated shops that share no code with the engine, are the oracles.</summary>
public sealed class CoatExperienceTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    /// <summary>With known spreads the two are equal to the last digits (EffectInformationTests); here each file has learnt its spreads from its own shops alone.</summary>
    [Fact]
    public void Files_of_several_shops_added_up_tell_a_new_shop_nearly_what_all_readings_at_once_would()
    {
        var simulated = new SimulatedCoats(41);
        var shops = Enumerable.Range(0, 60).Select(i => simulated.Shop($"shop {i}", 30)).ToArray();
        var files = shops.Take(57).Chunk(19).Select(some => CoatExperience.Of([.. some.SelectMany(reads => reads)], Cancel)).ToArray();
        var together = CoatExperience.Sum(files);
        Assert.Equal((57 * 30, 57, 57), (together.Readings, together.Shops, together.Parts.Count));
        foreach (var own in shops.Skip(57))
        {
            var joint = CoatHierarchy.Of([.. shops.Take(57).SelectMany(reads => reads), .. own.Take(5)], cancel: Cancel);
            var beside = CoatHierarchy.Of([.. own.Take(5)], together, Cancel);
            foreach (var read in own.Skip(5))
            {
                var (expected, told) = (joint.Expect(read.Coat), beside.Expect(read.Coat));
                Assert.Equal(expected.Value, told.Value, 0.1 * (expected.High - expected.Low));
                Assert.InRange((told.High - told.Low) / (expected.High - expected.Low), 0.9, 1.1);
            }
        }
    }

    [Fact]
    public void A_new_shop_with_no_to_three_readings_is_told_closer_with_others_experience_and_as_honestly()
    {
        var (near, alone, held, told) = (new double[4], new double[4], 0, 0);
        for (var seed = 0; seed < 12; seed++)
        {
            var simulated = new SimulatedCoats(300 + seed);
            var experience = CoatExperience.Sum([.. Enumerable.Range(0, 15).Select(i => CoatExperience.Of(simulated.Shop($"elsewhere {i}", 40), Cancel))]);
            for (var fresh = 0; fresh < 8; fresh++)
            {
                var reads = simulated.Shop($"new {fresh}", 18);
                for (var count = 0; count <= 3; count++)
                {
                    CoatHierarchy without = CoatHierarchy.Of([.. reads.Take(count)], cancel: Cancel), with = CoatHierarchy.Of([.. reads.Take(count)], experience, Cancel);
                    foreach (var read in reads.Skip(3))
                    {
                        var expected = with.Expect(read.Coat);
                        near[count] += Math.Abs(read.EomUm - expected.Value);
                        alone[count] += Math.Abs(read.EomUm - without.Expect(read.Coat).Value);
                        held += read.EomUm >= expected.Low && read.EomUm <= expected.High ? 1 : 0;
                        told++;
                    }
                }
            }
        }

        TestContext.Current.TestOutputHelper!.WriteLine(FormattableString.Invariant(
            $"mean error with no to three readings of one's own: {string.Join(", ", near.Select(sum => FormattableString.Invariant($"{4 * sum / told:0.00}")))} µm, without experience {string.Join(", ", alone.Select(sum => FormattableString.Invariant($"{4 * sum / told:0.00}")))}; {100.0 * held / told:0.0} % of {told} held"));
        Assert.All(near.Zip(alone), pair => Assert.True(pair.First < pair.Second));
        Assert.InRange(100.0 * held / told, 85, 95);
    }

    [Fact]
    public void Adding_up_hangs_on_no_order_and_counts_no_part_twice()
    {
        var simulated = new SimulatedCoats(5);
        CoatExperience one = CoatExperience.Of(simulated.Shop("one", 30), Cancel), two = CoatExperience.Of(simulated.Shop("two", 30), Cancel), three = CoatExperience.Of(simulated.Shop("three", 30), Cancel);
        var left = CoatExperience.Sum([CoatExperience.Sum([one, two]), three]);
        var right = CoatExperience.Sum([three, two, one]);
        Assert.Equal(left.Effects, right.Effects);
        Assert.All(left.Precision.Zip(right.Precision), pair => Assert.Equal(pair.First, pair.Second, 1e-9 * Math.Max(1, Math.Abs(pair.First))));
        Assert.Equal(left.Squares, right.Squares, 1e-9 * left.Squares);
        _ = Assert.Throws<ArgumentException>(() => CoatExperience.Sum([left, one]));
        _ = Assert.Throws<ArgumentException>(() => CoatExperience.Sum([]));
    }

    [Fact]
    public void Too_few_readings_are_not_given_out()
    {
        var reads = new SimulatedCoats(6).Shop("one", 40);
        _ = Assert.Throws<ArgumentException>(() => CoatExperience.Of([.. reads.Take(CoatExperience.LeastReadings - 1)], Cancel));
        Assert.True(CoatExperience.Needed(reads) > 7);
    }
}
