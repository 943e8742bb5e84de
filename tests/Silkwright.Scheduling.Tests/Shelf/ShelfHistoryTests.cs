using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Plans;
using Silkwright.Scheduling.Shelf;

namespace Silkwright.Scheduling.Tests.Shelf;

public sealed class ShelfHistoryTests
{
    private static readonly DateOnly Today = new(2026, 11, 25);

    private static readonly Shop Shop = new()
    {
        Emulsions =
        [
            new() { Id = "two-part", Family = EmulsionFamily.Diazo, Resists = [InkKind.Plastisol, InkKind.WaterBased], Price = new ContainerPrice(1000, 20) },
            new() { Id = "ready", Family = EmulsionFamily.Photopolymer, Resists = [InkKind.Plastisol], Price = new ContainerPrice(1000, 34) },
        ],
    };

    [Fact]
    public void Jobs_of_each_whole_month_are_that_months_demand_and_the_running_month_is_not()
    {
        var history = ShelfHistory.Of([Once("a", "2026-08-03"), Once("b", "2026-09-30"), Once("c", "2026-09-01"), Once("d", "2026-10-15"), Once("e", "2026-11-02"), Every("f", 2)], Today);

        Assert.Equal(["a", "b", "c", "d", "f"], history.Work.Select(work => work.Job.Name));
        Assert.Equal(["2026-08", "2026-09", "2026-10"], history.Months.Select(month => month.Name));
        Assert.Equal([1, 0, 0, 0, 2], history.Months[0].Times);
        Assert.Equal([0, 1, 1, 0, 2], history.Months[1].Times);
        Assert.Equal([0, 0, 0, 1, 2], history.Months[2].Times);
        // The mean month is the mean of the months.
        Assert.All(history.Work.Select((work, i) => (work.TimesPerMonth, Mean: history.Months.Average(month => month.Times[i]))), both => Assert.Equal(both.Mean, both.TimesPerMonth, 1e-12));
        Assert.Equal(Ground.MeasuredHere, history.Note.Ground);
        Assert.Contains("One job kept here is of no such month", history.Note.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_whole_months_are_too_little_and_one_mean_month_says_so()
    {
        var history = ShelfHistory.Of([Once("a", "2026-09-03"), Once("b", "2026-10-30"), Once("c", "2026-11-01"), Once("d", "2026-11-02"), Every("f", 2)], Today);

        Assert.Empty(history.Months);
        Assert.Equal([1 / 3.0, 1 / 3.0, 1 / 3.0, 1 / 3.0, 2], history.Work.Select(work => work.TimesPerMonth));
        Assert.Contains("Too little history", history.Note.Text, StringComparison.Ordinal);
        Assert.Contains("2 of the 3 whole months", history.Note.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void No_more_than_two_years_are_looked_back_on()
    {
        var history = ShelfHistory.Of([.. Enumerable.Range(0, 30).Select(month => Once($"m{month}", $"{2024 + (month / 12)}-{1 + (month % 12):00}-10"))], Today);
        Assert.Equal(ShelfHistory.MostMonths, history.Months.Count);
        Assert.Equal("m6", history.Work[0].Job.Name);
    }

    [Fact]
    public void Every_month_is_priced_with_the_shelf_that_the_mean_month_keeps()
    {
        DatedWork[] jobs = [Once("a", "2026-08-03"), Once("b", "2026-08-09", InkKind.WaterBased), Once("c", "2026-09-01"), Once("d", "2026-10-15", InkKind.WaterBased)];
        var (shelf, answer) = ShelfHistory.Of(jobs, Today).Choose(Shop, null, TimeProvider.System, null, TestContext.Current.CancellationToken);

        Assert.Equal(3, answer.Months.Count);
        // Worked out from the case by hand: what is kept, and each job that came at the cheapest cost kept, its emulsion out of the size bought.
        var pricePerGram = answer.Uses.ToDictionary(use => use.Emulsion, use => use.Size!.Price / use.Size.Grams);
        foreach (var (month, scenario) in answer.Months.Zip(shelf.Scenarios))
        {
            var jobsThen = shelf.Jobs.Sum(job => scenario.ScreensPerMonth[job.Id] * answer.Keep.Where(job.Costs.ContainsKey).Min(id => job.Costs[id] + (job.GramsPerScreen[id] * pricePerGram[id])));
            Assert.Equal(answer.FixedCostPerMonth + jobsThen, month.MonthlyCost, 1e-9 * month.MonthlyCost);
        }

        // Two jobs of two colours came in August.
        Assert.Equal(4, shelf.Scenarios[0].ScreensPerMonth.Values.Sum());
        Assert.Equal(answer.Months.Average(month => month.MonthlyCost), answer.MonthlyCost, 1e-9 * answer.MonthlyCost);
        var mean = ShopShelf.Choose(ShelfHistory.Of(jobs, Today).Work, Shop, null, TimeProvider.System, null, TestContext.Current.CancellationToken).Answer;
        Assert.Equal(mean.Keep, answer.Keep);
        Assert.Equal(mean.MonthlyCost, answer.MonthlyCost, 1e-9 * mean.MonthlyCost);
        Assert.StartsWith("Demand is this shop's own of 3 whole months", answer.Notes[0].Text, StringComparison.Ordinal);
    }

    private static DatedWork Once(string name, string day, InkKind ink = InkKind.Plastisol) => new(Job(name, ink), DateOnly.Parse(day, System.Globalization.CultureInfo.InvariantCulture), null);

    private static DatedWork Every(string name, double times) => new(Job(name, InkKind.Plastisol), Today, times);

    private static Job Job(string name, InkKind ink) => new()
    {
        Name = name, Date = Today, Run = 300, Colours = [new JobColour { Name = "one", Ink = ink, Kind = WorkKind.FullFrontSpot }, new JobColour { Name = "two", Ink = ink, Kind = WorkKind.LeftChestSpot }],
    };
}
