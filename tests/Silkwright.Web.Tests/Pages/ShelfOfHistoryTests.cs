using System.Text.Json.Nodes;

namespace Silkwright.Web.Tests.Pages;

/// <summary>The shelf out of the jobs kept here, on its page and over HTTP.</summary>
public sealed class ShelfOfHistoryTests : IAsyncLifetime
{
    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    private readonly RunningWeb web = new();

    public async ValueTask InitializeAsync()
    {
        await web.InitializeAsync();
        var key = (await web.Store.Shops.DefaultKeyAsync(Cancel))!;
        _ = await web.Store.Shops.SaveAsync(key, """{ "name": "Quay", "emulsions": [ { "id": "Left", "family": "diazo" }, { "id": "Right", "family": "photopolymer" } ] }""", "Ines", "First look round", cancel: Cancel);
    }

    public ValueTask DisposeAsync() => web.DisposeAsync();

    [Fact]
    public async Task Three_whole_months_are_held_apart_and_fewer_are_told()
    {
        await KeepAsync("2026-01-10", "2026-02-10");
        Assert.Contains("Too little history to hold months apart", await web.Browser.GetStringAsync("/shelf", Cancel), StringComparison.Ordinal);

        await KeepAsync("2026-03-01", "2026-03-31");
        var page = await web.Browser.GetStringAsync("/shelf", Cancel);
        Assert.All(["What each month would cost with it", "<b>2026-02</b>", "3 whole months with jobs, 2026-01 to 2026-03"], said => Assert.Contains(said, page, StringComparison.Ordinal));
        var document = JsonNode.Parse(await web.Browser.GetStringAsync("/api/shelf", Cancel))!;
        Assert.Equal(["2026-01", "2026-02", "2026-03"], document["months"]!.AsArray().Select(month => (string?)month!["name"]));
    }

    [Fact]
    public async Task A_shelf_that_nobody_knows_is_a_bad_request_on_the_page_too()
    {
        using var page = await web.Browser.GetAsync("/shelf?shelf=attic", Cancel);
        Assert.Equal(System.Net.HttpStatusCode.BadRequest, page.StatusCode);
        Assert.Contains("no such shelf", await page.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Jobs_whose_films_were_never_measured_are_named()
    {
        _ = await web.Store.Jobs.SaveAsync("film", """{ "name": "With a film", "date": "2026-01-10", "run": 300, "colours": [ { "name": "White", "ink": "plastisol", "film": "white.tif" } ] }""", "Ines", "New", cancel: Cancel);
        Assert.Contains("films are measured yet", await web.Browser.GetStringAsync("/shelf", Cancel), StringComparison.Ordinal);
        await KeepAsync("2026-01-10");
        Assert.Contains("not measured yet: With a film", await web.Browser.GetStringAsync("/shelf", Cancel), StringComparison.Ordinal);
        Assert.Contains("With a film is left out", await web.Browser.GetStringAsync("/api/shelf", Cancel), StringComparison.Ordinal);
    }

    private async Task KeepAsync(params string[] days)
    {
        foreach (var day in days)
            _ = await web.Store.Jobs.SaveAsync($"job-{day}", $$"""{ "name": "Job of {{day}}", "date": "{{day}}", "run": 300, "colours": [ { "name": "White", "ink": "plastisol", "kind": "leftChestSpot" } ] }""", "Ines", "New", cancel: Cancel);
    }
}
