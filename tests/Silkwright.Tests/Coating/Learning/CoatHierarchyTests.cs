using Silkwright.Coating.Learning;
using Silkwright.Estimates;

namespace Silkwright.Tests.Coating.Learning;

/// <summary>Learning over simulated shops: <see cref="SimulatedCoats"/> is the oracle, which shares no code with the engine.</summary>
public sealed class CoatHierarchyTests
{
    private const int Shops = 200;
    private const int AskedEach = 5;

    [Fact]
    public void Nine_of_ten_new_readings_fall_in_their_interval_and_pooling_errs_less_than_either_extreme()
    {
        var (learnt, asked) = Drawn(new SimulatedCoats(7), new Random(8));
        var coats = CoatHierarchy.Of(learnt, cancel: TestContext.Current.CancellationToken);
        var (held, width, errors) = (0, 0.0, (Pooled: 0.0, Alone: 0.0, All: 0.0));
        var byShop = learnt.GroupBy(read => read.Coat.Shop).ToDictionary(g => g.Key, g => g.Sum(read => read.EomUm) / g.Sum(Balance));
        var all = learnt.Sum(read => read.EomUm) / learnt.Sum(Balance);
        foreach (var read in asked)
        {
            var expected = coats.Expect(read.Coat);
            held += read.EomUm >= expected.Low && read.EomUm <= expected.High ? 1 : 0;
            width += (expected.High - expected.Low) / asked.Count;
            errors.Pooled += Math.Abs(read.EomUm - expected.Value) / asked.Count;
            errors.Alone += Math.Abs(read.EomUm - (Balance(read) * byShop[read.Coat.Shop])) / asked.Count;
            errors.All += Math.Abs(read.EomUm - (Balance(read) * all)) / asked.Count;
        }

        CoatPicture.Draw([.. asked.Select(read => (read.EomUm, coats.Expect(read.Coat)))], ("all shops together", errors.Pooled), ("each shop alone", errors.Alone), ("all as one shop", errors.All));
        var covered = 100.0 * held / asked.Count;
        TestContext.Current.TestOutputHelper!.WriteLine(FormattableString.Invariant(
            $"{learnt.Count} readings of {Shops} shops, {asked.Count} asked: {covered:0.0} % held, mean width {width:0.0} µm; mean error {errors.Pooled:0.00} µm, each shop alone {errors.Alone:0.00}, all as one {errors.All:0.00}"));
        Assert.InRange(covered, 85, 95);
        Assert.True(errors.Pooled < errors.Alone && errors.Pooled < errors.All);
    }

    [Fact]
    public void A_shop_of_few_readings_is_told_honestly_too()
    {
        var (learnt, asked) = Drawn(new SimulatedCoats(17), new Random(18));
        var coats = CoatHierarchy.Of(learnt, cancel: TestContext.Current.CancellationToken);
        var few = learnt.GroupBy(read => read.Coat.Shop).Where(g => g.Count() <= 5).Select(g => g.Key).ToHashSet();
        var covered = asked.Where(read => few.Contains(read.Coat.Shop)).Select(read => (read, coats.Expect(read.Coat))).Select(p => Held(p.read, p.Item2)).ToArray();
        TestContext.Current.TestOutputHelper!.WriteLine($"{few.Count} shops of at most 5 readings: {100 * covered.Average():0.0} % of {covered.Length} held");
        Assert.InRange(100 * covered.Average(), 83, 97);
    }

    /// <summary>Nobody else's readings at hand: one shop from its first reading on.</summary>
    [Fact]
    public void One_shop_alone_is_covered_and_told_closer_with_each_reading()
    {
        var (held, widths) = (new List<double>(), new Dictionary<int, List<double>>());
        for (var seed = 0; seed < 150; seed++)
        {
            var reads = new SimulatedCoats(100 + seed).Shop("one", 60);
            foreach (var count in new[] { 0, 1, 5, 20, 50 })
            {
                var coats = CoatHierarchy.Of([.. reads.Take(count)], cancel: TestContext.Current.CancellationToken);
                foreach (var read in reads.Skip(count == 50 ? 50 : 55))
                {
                    var expected = coats.Expect(read.Coat);
                    held.Add(Held(read, expected));
                    if (!widths.TryGetValue(count, out var list))
                        widths[count] = list = [];
                    list.Add((expected.High - expected.Low) / Math.Max(1, expected.Value));
                }
            }
        }

        TestContext.Current.TestOutputHelper!.WriteLine($"{100 * held.Average():0.0} % held; mean width over value by readings: {string.Join(", ", widths.Select(w => FormattableString.Invariant($"{w.Key}: {w.Value.Average():0.00}")))}");
        Assert.InRange(100 * held.Average(), 85, 95);
        var inOrder = widths.OrderBy(w => w.Key).Select(w => w.Value.Average()).ToArray();
        Assert.Equal(inOrder.OrderDescending(), inOrder);
    }

    private static double Held(CoatRead read, Estimate expected) => read.EomUm >= expected.Low && read.EomUm <= expected.High ? 1 : 0;

    private static double Balance(CoatRead read) => Math.Max(1, CoatHierarchy.Of([]).Expect(read.Coat).Value);

    private static (List<CoatRead> Learnt, List<CoatRead> Asked) Drawn(SimulatedCoats coats, Random random)
    {
        var (learnt, asked) = (new List<CoatRead>(), new List<CoatRead>());
        for (var shop = 0; shop < Shops; shop++)
        {
            var count = 1 + random.Next(50);
            var reads = coats.Shop($"shop {shop}", count + AskedEach);
            learnt.AddRange(reads.Take(count));
            asked.AddRange(reads.Skip(count));
        }

        return (learnt, asked);
    }
}
