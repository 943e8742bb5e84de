using System.Globalization;
using Silkwright.Estimates;
using Silkwright.Plans;

namespace Silkwright.Scheduling.Shelf;

/// <summary>A shop's own jobs by month as the demand its shelf must meet. docs/engines/shelf.md, "Out of the shop's history".</summary>
public sealed record ShelfHistory
{
    /// <summary>Whole months that must be there before they are held apart: two tell a difference, three whether it comes again. Our own choice.</summary>
    public const int LeastMonths = 3;

    /// <summary>Months looked back on: two of each season; before, it was another shop. Our own choice.</summary>
    public const int MostMonths = 24;

    /// <summary>The mean month.</summary>
    public required IReadOnlyList<ShelfWork> Work { get; init; }

    /// <summary>The months, each as likely, with how often each job of <see cref="Work"/> came; empty with too little history.</summary>
    public required IReadOnlyList<(string Name, IReadOnlyList<double> Times)> Months { get; init; }

    /// <summary>What was taken for the demand, and on what ground.</summary>
    public required Note Note { get; init; }

    /// <param name="jobs">The jobs on record.</param>
    /// <param name="today">The month that runs is not whole yet.</param>
    public static ShelfHistory Of(IReadOnlyList<DatedWork> jobs, DateOnly today)
    {
        var months = jobs.Where(job => job.TimesPerMonth is null).Select(job => MonthOf(job.Day)).Distinct().Order().ToArray();
        DateOnly[] whole = [.. months.Where(month => month < MonthOf(today)).TakeLast(MostMonths)];
        return whole.Length < LeastMonths ? OneMonth(jobs, Math.Max(1, months.Length), whole.Length) : Apart(jobs, whole);
    }

    /// <summary>The shelf for the mean month, and what each month costs with it.</summary>
    /// <inheritdoc cref="ShopShelf.Choose"/>
    public (ShelfCase Case, ShelfAnswer Answer) Choose(
        Shop shop, int? most, TimeProvider time, IReadOnlySet<string>? today = null, CancellationToken cancel = default)
    {
        var (mean, answer) = ShopShelf.Choose(Work, shop, most, time, today, cancel);
        if (Months.Count == 0)
            return (mean, answer with { Notes = [Note, .. answer.Notes] });

        // The case has a job for each colour, in the order of the work.
        var works = Work.SelectMany((work, i) => work.Job.Colours.Select(_ => i)).ToArray();
        var shelf = mean with
        {
            Scenarios = [.. Months.Select(month => new ShelfScenario(month.Name, 1, mean.Jobs.Select((job, j) => (job.Id, Times: month.Times[works[j]])).ToDictionary(job => job.Id, job => job.Times)))],
        };
        // Without minimums months enter a choice by their mean alone, so the shelf is the same; what each costs with it is new.
        var apart = ShelfChoice.Of(shelf, time, null, cancel);
        return (shelf, answer with { Months = apart.Months, Notes = [Note, .. answer.Notes] });
    }

    private static ShelfHistory OneMonth(IReadOnlyList<DatedWork> jobs, int months, int whole) => new()
    {
        Work = [.. jobs.Select(job => new ShelfWork(job.Job, job.TimesPerMonth ?? 1.0 / months))],
        Months = [],
        Note = new Note(
            $"Too little history to hold months apart: {whole} of the {LeastMonths} whole months it takes have jobs here. One mean month is taken, out of all jobs kept{(months > 1 ? $" in {months} months" : "")}.",
            Ground.CommonPractice),
    };

    private static ShelfHistory Apart(IReadOnlyList<DatedWork> jobs, DateOnly[] months)
    {
        DatedWork[] counted = [.. jobs.Where(job => job.TimesPerMonth is not null || months.Contains(MonthOf(job.Day)))];
        return new ShelfHistory
        {
            Work = [.. counted.Select(job => new ShelfWork(job.Job, job.TimesPerMonth ?? 1.0 / months.Length))],
            Months = [.. months.Select(month => (Name(month), (IReadOnlyList<double>)[.. counted.Select(job => job.TimesPerMonth ?? (MonthOf(job.Day) == month ? 1 : 0))]))],
            Note = new Note(
                $"Demand is this shop's own of {months.Length} whole months with jobs, {Name(months[0])} to {Name(months[^1])}, each as likely to come again. A job counts in the month of its date, or in every month where it says how often it comes.{PassedOver(jobs.Count - counted.Length)}",
                Ground.MeasuredHere),
        };
    }

    private static string PassedOver(int jobs) => jobs switch
    {
        0 => "",
        1 => " One job kept here is of no such month and does not count.",
        _ => $" {jobs} jobs kept here are of no such month and do not count.",
    };

    private static DateOnly MonthOf(DateOnly day) => new(day.Year, day.Month, 1);

    private static string Name(DateOnly month) => month.ToString("yyyy-MM", CultureInfo.InvariantCulture);
}
