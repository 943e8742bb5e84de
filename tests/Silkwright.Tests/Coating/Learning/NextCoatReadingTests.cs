using System.Diagnostics;
using Silkwright.Coating;
using Silkwright.Coating.Learning;
using Silkwright.Emulsion;
using Silkwright.Mesh;

namespace Silkwright.Tests.Coating.Learning;

public sealed class NextCoatReadingTests
{
    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    [Fact]
    public void Readings_added_in_any_order_teach_the_same()
    {
        var reads = new SimulatedCoats(3).Shop("one", 40);
        var learnt = CoatHierarchy.Of([.. reads.Take(30)], cancel: Cancel);
        var forth = reads.Skip(30).Aggregate(learnt, (sofar, read) => sofar.With(read));
        var back = reads.Skip(30).Reverse().Aggregate(learnt, (sofar, read) => sofar.With(read));

        foreach (var read in reads)
        {
            Assert.Equal(forth.Expect(read.Coat).Value, back.Expect(read.Coat).Value, 1e-7);
            Assert.Equal(forth.Expect(read.Coat).High, back.Expect(read.Coat).High, 1e-7);
        }
    }

    /// <summary>
    /// With the spreads kept, a reading that comes in dearer by δ moves a coat's mean by δ C / (V + R), and narrows its variance by C² / (V + R): conditioning of
    /// normals, any textbook. C is found here from the moves of two readings that differ, V and R from intervals before.
    /// </summary>
    [Fact]
    public void What_a_reading_narrows_is_what_its_moves_say()
    {
        var reads = new SimulatedCoats(5).Shop("one", 24);
        var learnt = CoatHierarchy.Of(reads, cancel: Cancel);
        CoatObservation[] coats = [.. reads.Where(read => read.EomUm > 8).Take(6).Select((read, i) => read.Coat with { Screen = $"new {i}" })];
        foreach (var worth in NextCoatReading.Of(learnt, coats, Cancel))
        {
            var asked = coats[worth.Case];
            var at = learnt.Expect(asked);
            var (low, high) = (learnt.With(new CoatRead(asked, at.Value - 0.05)), learnt.With(new CoatRead(asked, at.Value + 0.05)));
            var variance = Square((at.High - at.Value) / 1.6449);
            for (var i = 0; i < coats.Length; i++)
            {
                var move = (high.Expect(coats[i]).Value - low.Expect(coats[i]).Value) / 0.1;
                Assert.Equal(Square(worth.Narrowed[i].BeforeUm / 1.6449) - (move * move * variance), Square(worth.Narrowed[i].AfterUm / 1.6449), 0.02 * variance);
            }
        }
    }

    [Fact]
    public void The_coat_that_has_been_read_often_is_not_the_one_to_read()
    {
        CoatObservation often = Coat("often"), never = Coat("never");
        var learnt = CoatHierarchy.Of([.. Enumerable.Range(0, 8).Select(i => new CoatRead(often, 11 + (0.4 * i)))], cancel: Cancel);
        var worth = NextCoatReading.Of(learnt, [often, never, never], Cancel);

        Assert.Equal([1, 0], worth.Select(one => one.Case));
        Assert.True(worth[0].ShrinksUm > 2 * worth[1].ShrinksUm);
        Assert.Equal(worth[0].ShrinksUm / NextCoatReading.UsualMinutes, worth[0].PerMinuteUm, 1e-12);
    }

    /// <summary>Spreads out of a share of the readings predict as those out of all.</summary>
    [Fact]
    public void Many_shops_are_told_as_honestly_as_few()
    {
        var coats = new SimulatedCoats(7);
        var (learnt, asked) = (new List<CoatRead>(), new List<CoatRead>());
        for (var i = 0; i < 500; i++)
        {
            var reads = coats.Shop($"shop {i}", 52);
            learnt.AddRange(reads.Take(50));
            asked.AddRange(reads.Skip(50));
        }

        var watch = Stopwatch.StartNew();
        var all = CoatHierarchy.Of(learnt, cancel: Cancel);
        var fitted = watch.ElapsedMilliseconds;
        watch.Restart();
        all = all.With(asked[0]);
        TestContext.Current.TestOutputHelper!.WriteLine($"{learnt.Count} readings in {fitted} ms, one more in {watch.ElapsedMilliseconds} ms");
        var held = asked.Average(read => all.Expect(read.Coat) is var expected && read.EomUm >= expected.Low && read.EomUm <= expected.High ? 100.0 : 0);
        Assert.InRange(held, 87, 94);
    }

    private static CoatObservation Coat(string emulsion) => new()
    {
        Shop = "one",
        Operator = "anna",
        Trough = new Trough("round", 1.5),
        Emulsion = new StencilEmulsion { Id = emulsion, Family = EmulsionFamily.DualCure, SolidsPercent = 38 },
        Mesh = WovenMesh.Of(new MeshFabric(61, 64)),
        Strokes = [new(StrokeSide.Print), new(StrokeSide.Print), new(StrokeSide.Squeegee)],
    };

    private static double Square(double value) => value * value;
}
