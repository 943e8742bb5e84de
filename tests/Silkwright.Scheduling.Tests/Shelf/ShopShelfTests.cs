using Silkwright.Answers;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Plans;
using Silkwright.Scheduling.Shelf;

namespace Silkwright.Scheduling.Tests.Shelf;

public sealed class ShopShelfTests
{
    private static readonly DateOnly Day = new(2026, 11, 25);

    private static readonly Shop Shop = new()
    {
        Emulsions =
        [
            new() { Id = "two-part", Family = EmulsionFamily.Diazo, Resists = [InkKind.Plastisol, InkKind.WaterBased], Price = new ContainerPrice(1000, 20) },
            new() { Id = "ready", Family = EmulsionFamily.Photopolymer, Resists = [InkKind.Plastisol], Price = new ContainerPrice(1000, 34) },
            new() { Id = "solvent", Family = EmulsionFamily.DualCure, Price = new ContainerPrice(1000, 26) },
        ],
    };

    private static ShelfWork Work(string name, InkKind ink, long run, double times) => new(
        new Job { Name = name, Date = Day, Run = run, Colours = [new JobColour { Name = "one", Ink = ink, Kind = WorkKind.FullFrontSpot }] }, times);

    private static (ShelfCase Case, ShelfAnswer Answer) Choose(params ShelfWork[] work) => ShopShelf.Choose(work, Shop, null, TimeProvider.System, null, TestContext.Current.CancellationToken);

    /// <summary>A shop that makes little keeps few emulsions: each one kept has its price. Common practice, no source.</summary>
    [Fact]
    public void A_shop_with_little_work_keeps_one_where_one_serves()
    {
        var (_, answer) = Choose(Work("shirts", InkKind.Plastisol, 100, 2), Work("bags", InkKind.WaterBased, 100, 1));
        Assert.Single(answer.Keep);
    }

    [Fact]
    public void With_enough_work_of_each_kind_every_job_goes_where_it_is_cheapest()
    {
        ShelfWork[] work = [Work("shirts", InkKind.Plastisol, 400, 400), Work("bags", InkKind.WaterBased, 3000, 400)];
        var (_, answer) = Choose(work);
        foreach (var (job, _) in work)
        {
            var cheapest = ColourCosts.Of(job, job.Colours[0], Shop)[0];
            Assert.Equal(cheapest.Emulsion, answer.Assignments[$"{job.Name}: one"]);
        }
    }

    /// <summary>No other set of the three costs less, each judged by the costs of the case it ended with.</summary>
    [Fact]
    public void The_shelf_is_the_cheapest_of_all_sets()
    {
        ShelfWork[] work = [Work("a", InkKind.Plastisol, 200, 12), Work("b", InkKind.WaterBased, 1500, 5), Work("c", InkKind.Plastisol, 4000, 3), Work("d", InkKind.Uv, 300, 1)];
        var (shelf, answer) = Choose(work);
        for (var set = 1; set < 8; set++)
        {
            var kept = shelf.Emulsions.Where((_, i) => (set >> i & 1) == 1).ToArray();
            if (shelf.Jobs.Any(job => !kept.Any(e => job.Costs.ContainsKey(e.Id))))
                continue;
            var cost = kept.Sum(e => e.FixedCostPerMonth + e.Containers[0].FixedCostPerMonth)
                + shelf.Jobs.Sum(job => job.ScreensPerMonth * kept.Where(e => job.Costs.ContainsKey(e.Id)).Min(e => job.Costs[e.Id] + (job.GramsPerScreen[e.Id] * e.Containers[0].Price / e.Containers[0].Grams)));
            Assert.True(answer.MonthlyCost <= cost + 1e-6, $"{string.Join(", ", kept.Select(e => e.Id))} costs {cost}, told {answer.MonthlyCost}");
        }
    }

    /// <summary>A large container is cheaper by the gram and dies half used in a shop that makes little. Common practice, no source.</summary>
    [Theory]
    [InlineData(2, 900)]
    [InlineData(400, 4500)]
    public void The_pace_of_its_jobs_decides_the_size(double timesPerMonth, double grams)
    {
        var shop = Shop with { Emulsions = [Shop.Emulsions[0] with { Price = new ContainerPrice(900, 24), OtherSizes = [new ContainerPrice(4500, 95)] }] };
        var (_, answer) = ShopShelf.Choose([Work("bags", InkKind.WaterBased, 100, timesPerMonth)], shop, null, TimeProvider.System, null, TestContext.Current.CancellationToken);
        var size = Assert.Single(answer.Uses).Size;
        Assert.Equal(grams, size?.Grams);
        Assert.True(size?.NextExtra > 0);
    }

    /// <summary>An emulsion weighed beside the shop's own is tried where it saves more than trying costs. Common practice, no source.</summary>
    [Theory]
    [InlineData(1, 40, false)]
    [InlineData(400, 20, true)]
    [InlineData(400, 90, false)]
    public void An_emulsion_new_to_the_shop_is_tried_where_it_pays(double timesPerMonth, double price, bool tried)
    {
        var dear = Shop.Emulsions[0] with { Price = new ContainerPrice(1000, 45) };
        var shop = Shop with { Emulsions = [dear, dear with { Id = "new", Price = new ContainerPrice(1000, price) }] };
        var (shelf, answer) = ShopShelf.Choose(
            [Work("bags", InkKind.WaterBased, 100, timesPerMonth)], shop, null, TimeProvider.System, new HashSet<string> { "two-part" }, TestContext.Current.CancellationToken);
        Assert.Equal(tried ? ["new"] : ["two-part"], answer.Keep);
        Assert.Equal(tried ? ["new"] : [], answer.Change!.Try);
        Assert.Equal(tried ? shelf.Emulsions[1].SwitchingCostPerMonth : 0, answer.SwitchingCostPerMonth);
        Assert.True(shelf.Emulsions[1].SwitchingCostPerMonth > 0);
    }

    /// <summary>A labour rate that nobody knows moves every shelf alike: the difference of two is known far better than either.</summary>
    [Fact]
    public void What_a_month_costs_and_every_difference_has_an_interval_and_the_shops_currency()
    {
        var (_, answer) = Choose(Work("shirts", InkKind.Plastisol, 100, 2), Work("bags", InkKind.WaterBased, 100, 1));
        var doubt = Assert.IsType<ShelfDoubt>(answer.Doubt);
        Assert.Equal(Shop.Prices.Currency, answer.Currency);
        Assert.Equal(answer.MonthlyCost, doubt.MonthlyCost.Value, 1e-9);
        Assert.Equal(answer.Change?.SavesPerMonth, doubt.SavesPerMonth?.Value);
        Assert.Equal(answer.SecondBest?.Extra, doubt.SecondBest?.Value);
        Assert.True(doubt.MonthlyCost.High > doubt.MonthlyCost.Low);
        Assert.True(doubt.OneMore!.High - doubt.OneMore.Low < doubt.MonthlyCost.High - doubt.MonthlyCost.Low);
        Assert.InRange(doubt.ChanceCheapestPercent, 1, 100);
    }

    [Fact]
    public void Jobs_that_nothing_serves_are_named()
    {
        var shop = Shop with { Emulsions = [Shop.Emulsions[1]] };
        var fault = Assert.Throws<InputProblemException>(() =>
            ShopShelf.Choose([Work("shirts", InkKind.Plastisol, 100, 1), Work("bags", InkKind.WaterBased, 100, 1)], shop, null, TimeProvider.System, null, TestContext.Current.CancellationToken));
        Assert.Contains("bags: one", Assert.Single(fault.Problems).What, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_jobs_of_one_name_are_told_apart()
    {
        var (shelf, _) = Choose(Work("shirts", InkKind.Plastisol, 100, 1), Work("shirts", InkKind.Plastisol, 200, 1));
        Assert.Equal(["shirts: one", "shirts: one (2)"], shelf.Jobs.Select(job => job.Id));
    }
}
