using Silkwright.Estimates;
using Silkwright.Records.Jobs;
using Silkwright.Records.Tests.Store;
using static Silkwright.Records.Tests.Store.TemporaryStore;

namespace Silkwright.Records.Tests.Jobs;

public sealed class RevisionsOfAJob
{
    [Theory]
    [InlineData(Database.Sqlite)]
    [InlineData(Database.Postgres)]
    public async Task Open_jobs_come_earliest_due_first_and_those_without_a_date_last(Database database)
    {
        await using var temporary = await TemporaryStore.OpenWithShopAsync(database);
        var jobs = temporary.Store.Jobs;
        _ = await SaveAsync(jobs, "undated", null);
        _ = await SaveAsync(jobs, "late", "2026-12-04");
        _ = await SaveAsync(jobs, "soon", "2026-11-27");
        _ = await SaveAsync(jobs, "over", "2026-11-20");
        _ = await jobs.SetStateAsync("over", JobState.Done, "Bram", "Shipped", Cancel);

        Assert.Equal(["soon", "late", "undated"], (await jobs.ListAsync(JobState.Open, cancel: Cancel)).Select(j => j.JobId));
        Assert.Equal(["over"], (await jobs.ListAsync(JobState.Done, cancel: Cancel)).Select(j => j.JobId));
        Assert.Equal(4, (await jobs.ListAsync(shopKey: "quay", cancel: Cancel)).Count);
        Assert.Empty(await jobs.ListAsync(shopKey: "elsewhere", cancel: Cancel));
    }

    [Fact]
    public async Task Closing_a_job_is_a_revision_that_says_who_and_why()
    {
        await using var temporary = await TemporaryStore.OpenWithShopAsync();
        var jobs = temporary.Store.Jobs;
        _ = await SaveAsync(jobs, "walk", "2026-11-27");
        _ = await jobs.SetStateAsync("walk", JobState.Done, "Ruth", "Shipped", Cancel);
        var history = await jobs.HistoryAsync("walk", Cancel);
        Assert.Equal([JobState.Done, JobState.Open], history.Select(r => r.State));
        Assert.Equal(("Ruth", "Shipped"), (history[0].SavedBy, history[0].Why));
        Assert.Equal(history[1].Text, history[0].Text);
    }

    [Fact]
    public async Task A_job_moves_its_due_date_with_its_document()
    {
        await using var temporary = await TemporaryStore.OpenWithShopAsync();
        _ = await SaveAsync(temporary.Store.Jobs, "walk", "2026-11-27");
        _ = await SaveAsync(temporary.Store.Jobs, "walk", "2026-11-30");
        var job = await temporary.Store.Jobs.CurrentAsync("walk", Cancel);
        Assert.Equal((2, new DateOnly(2026, 11, 30), "Job walk"), (job!.Revision, job.DueDate!.Value, job.Name));
    }

    [Theory]
    [InlineData("""{"run":3}""", "name")]
    [InlineData("""{"name":"Walk","dueDate":"27/11/2026"}""", "dueDate")]
    public async Task A_job_that_a_list_could_not_show_is_refused(string text, string field)
    {
        await using var temporary = await TemporaryStore.OpenWithShopAsync();
        var fault = await Assert.ThrowsAsync<InputProblemException>(() => temporary.Store.Jobs.SaveAsync("walk", text, "Ines", "New", cancel: Cancel));
        Assert.Contains(field, Assert.Single(fault.Problems).Where, StringComparison.Ordinal);
        Assert.Null(await temporary.Store.Jobs.CurrentAsync("walk", Cancel));
    }

    [Fact]
    public async Task A_job_needs_a_known_shop()
    {
        await using var temporary = await TemporaryStore.OpenAsync();
        _ = await Assert.ThrowsAsync<InputProblemException>(() => SaveAsync(temporary.Store.Jobs, "walk", null));
    }

    [Fact]
    public async Task The_latest_film_of_a_name_is_the_one_a_job_means()
    {
        await using var temporary = await TemporaryStore.OpenWithShopAsync();
        var store = temporary.Store;
        _ = await SaveAsync(store.Jobs, "walk", null);
        using var first = new MemoryStream([1]);
        using var second = new MemoryStream([2]);
        var one = await store.Films.AddAsync(first, "base.tif", "Ines", Cancel);
        var two = await store.Films.AddAsync(second, "base.tif", "Ines", Cancel);
        await store.Jobs.AttachFilmAsync("walk", "../films/base.tif", one.Hash, "Ines", Cancel);
        await store.Jobs.AttachFilmAsync("walk", "../films/base.tif", two.Hash, "Ines", Cancel);
        Assert.Equal(two.Hash, (await store.Jobs.FilmHashesAsync("walk", Cancel))["../films/base.tif"]);
        _ = await Assert.ThrowsAsync<InputProblemException>(() => store.Jobs.AttachFilmAsync("walk", "x.tif", new string('0', 64), "Ines", Cancel));
    }

    private static Task<JobRevision> SaveAsync(JobRecords jobs, string id, string? due) => jobs.SaveAsync(
        id, due is null ? $$"""{"name":"Job {{id}}"}""" : $$"""{"name":"Job {{id}}","dueDate":"{{due}}"}""", "Ines", "Ordered", cancel: Cancel);

    [Theory]
    [InlineData(Database.Sqlite)]
    [InlineData(Database.Postgres)]
    public async Task A_job_counts_for_its_date_or_the_day_it_is_due_or_the_day_it_was_first_kept(Database database)
    {
        await using var temporary = await TemporaryStore.OpenWithShopAsync(database);
        var jobs = temporary.Store.Jobs;
        _ = await temporary.Store.Shops.SaveAsync("mill", """{"name":"Mill"}""", "Ines", "Another shop", cancel: Cancel);
        _ = await jobs.SaveAsync("dated", Job(""" "date": "2026-08-03", "dueDate": "2026-09-01", """), "Ines", "New", cancel: Cancel);
        _ = await jobs.SaveAsync("due", Job(""" "dueDate": "2026-09-01", """), "Ines", "New", cancel: Cancel);
        _ = await jobs.SaveAsync("neither", Job(""), "Ines", "New", cancel: Cancel);
        _ = await jobs.SaveAsync("elsewhere", Job(""), "Ines", "New", shopKey: "mill", cancel: Cancel);
        temporary.Time.Pass(TimeSpan.FromDays(40));
        _ = await jobs.SaveAsync("neither", Job(""" "timesPerMonth": 2, """), "Ines", "It comes again", cancel: Cancel);

        var dated = (await jobs.DatedAsync(cancel: Cancel)).OrderBy(job => job.Day).ToArray();

        var firstKept = TimeZoneInfo.ConvertTime(temporary.Time.Now - TimeSpan.FromDays(40), TimeZoneInfo.Local);
        Assert.Equal([new DateOnly(2026, 8, 3), new(2026, 9, 1), DateOnly.FromDateTime(firstKept.DateTime)], dated.Select(job => job.Day));
        Assert.Equal((2, 2.0), (dated[2].Revision.Revision, dated[2].Document.TimesPerMonth));
    }

    private static string Job(string more) => $$"""{ "name": "Walk", {{more}} "run": 300, "colours": [ { "name": "White", "ink": "plastisol", "kind": "leftChestSpot" } ] }""";
}
