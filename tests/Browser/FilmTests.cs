using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using SkiaSharp;
using static Microsoft.Playwright.Assertions;

namespace Silkwright.Browser.Tests;

/// <summary>A film looked at: moved, enlarged, asked. The film is <see cref="TestFilm"/>: a solid block from 10 to 70 mm by 10 to 60 mm, a line of 1.2 mm at 80 mm.</summary>
public sealed class FilmTests(RunningProgram program) : IClassFixture<RunningProgram>
{
    [Fact]
    public async Task A_tap_on_the_film_tells_how_wide_it_is_there()
    {
        var page = await program.VisitAsync();
        await OpenAsync(page);
        var box = (await page.Locator(".film-zoom").BoundingBoxAsync())!;

        // The whole film is shown: 120 mm across the box, 90 mm in its middle.
        var px = box.Width / 120;
        await page.Locator(".film-zoom").ClickAsync(new() { Position = new() { X = (float)(80 * px), Y = (float)(box.Height / 2) } });
        await Expect(page.Locator("#film-spot .spot-words")).ToContainTextAsync("Prints, 1");
        await Expect(page.Locator("#film-spot .spot-words")).ToContainTextAsync("this is wide enough");
        await Expect(page.Locator(".film-zoom i.disc")).ToBeVisibleAsync();
        Assert.Contains("mm&y=", page.Url, StringComparison.Ordinal);

        // What a link to this spot shows is the same with the page loaded afresh, near enough to see every pixel.
        await page.ReloadAsync();
        await Expect(page.Locator("#film-spot .spot-words")).ToContainTextAsync("Prints, 1");
        await Expect(page.Locator(".film-sheet.enlarged")).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task The_film_is_moved_and_enlarged_by_buttons_and_keys()
    {
        var page = await program.VisitAsync(390, 844);
        await OpenAsync(page);
        await Expect(page.Locator(".film-sheet img")).ToHaveCountAsync(1);
        foreach (var name in (string[])["Enlarge", "Smaller", "Whole film", "Every pixel"])
            Assert.True((await page.GetByRole(AriaRole.Button, new() { Name = name }).BoundingBoxAsync())!.Height >= 48);
        await page.GetByRole(AriaRole.Button, new() { Name = "Every pixel" }).ClickAsync();
        await Expect(page.Locator(".film-sheet img[src*='/tiles/4/']").First).ToBeVisibleAsync();
        await page.Locator(".film-zoom").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#film-spot .spot-words")).ToContainTextAsync("Prints, at least");
        await page.Keyboard.PressAsync("Home");
        await Expect(page.Locator(".film-sheet img")).ToHaveCountAsync(1);
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= 390, "the page scrolls sideways");
    }

    [Fact]
    public async Task Without_script_a_form_asks_for_the_spot()
    {
        var page = await program.VisitAsync();
        await OpenAsync(page);
        await page.RouteAsync("**/look/*.js*", route => route.AbortAsync());
        await page.ReloadAsync();
        await page.GetByLabel("From the left").FillAsync("80");
        await page.GetByLabel("From the top").FillAsync("40mm");
        await page.GetByRole(AriaRole.Button, new() { Name = "Look there" }).ClickAsync();
        await Expect(page.Locator("#film-spot .spot-words")).ToContainTextAsync("Prints, 1");
        await Expect(page.Locator(".film-zoom svg image")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Right", Exact = true }).ClickAsync();
        await Expect(page.Locator("#film-spot .spot-words")).ToContainTextAsync("Gap, ");
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task The_films_page_keeps_nobody_out_and_sends_red_alone_in_safe_light(bool safeLight)
    {
        var page = await program.VisitAsync(820, 1180);
        await OpenAsync(page);
        if (safeLight)
        {
            await page.GetByRole(AriaRole.Button, new() { Name = "Safe light" }).ClickAsync();
            await Expect(page.Locator("html.safe")).ToHaveCountAsync(1);
            await page.Locator(".station-link").First.ClickAsync();
        }

        await page.Locator(".film-zoom").ScrollIntoViewIfNeededAsync();
        await Expect(page.Locator(".film-sheet img")).ToHaveCountAsync(1);
        var result = await page.RunAxe();
        Assert.Empty(result.Violations.Where(v => v.Impact is "serious" or "critical").Select(v => $"{v.Id}: {v.Help} {v.Nodes[0].Html}"));
        if (!safeLight)
            return;
        using var picture = SKBitmap.Decode(await page.ScreenshotAsync());
        Assert.All(picture.Pixels, pixel => Assert.Equal((0, 0), (pixel.Green, pixel.Blue)));
    }

    /// <summary>Three sheets of 400 x 400 mm, told apart by a line: the last waits long enough to be stopped.</summary>
    [Fact]
    public async Task Films_sent_together_are_told_while_they_wait_and_one_that_is_stopped_is_measured_when_asked()
    {
        var page = await program.VisitAsync(390, 844);
        await page.GotoAsync("/jobs/new");
        await page.GetByLabel("Name", new() { Exact = true }).FillAsync("Three sheets");
        await page.GetByLabel("Pieces").FillAsync("600");
        await page.Locator("input[type=file]").SetInputFilesAsync([.. Enumerable.Range(1, 3).Select(n => TestFilm.DrawSheet(program.Workbench, $"sheet-{n}.tif", n))]);
        await page.GetByLabel("Your name").FillAsync("Ada");

        // What the button says is gone with its page, so it is written down; the test's own looks wait for the next page.
        await page.EvaluateAsync("""() => { const button = document.querySelector("[data-sending]"); new MutationObserver(() => sessionStorage.said = `${button.textContent}, ${button.disabled}`).observe(button, { childList: true }); }""");
        await page.GetByRole(AriaRole.Button, new() { Name = "Plan this job" }).ClickAsync();
        await Expect(page.Locator(".measuring li")).ToHaveCountAsync(3, new() { Timeout = 90_000 });
        Assert.Equal("Sending the films …, true", await page.EvaluateAsync<string>("sessionStorage.said"));
        var last = page.Locator(".measuring li").Nth(2);
        await Expect(last.Locator(".share")).ToContainTextAsync("waiting for");
        await Expect(last.GetByRole(AriaRole.Progressbar, new() { Name = "sheet-3.tif measured" })).ToHaveAttributeAsync("aria-valuenow", "0");
        await last.GetByRole(AriaRole.Button, new() { Name = "Stop" }).ClickAsync();
        await Expect(last.Locator(".share")).ToHaveTextAsync("stopped", new() { Timeout = 90_000 });
        await last.GetByRole(AriaRole.Button, new() { Name = "Measure it" }).ClickAsync(new() { Timeout = 90_000 });
        await Expect(page.Locator(".line > .station")).ToHaveCountAsync(6, new() { Timeout = 90_000 });
    }

    private async Task OpenAsync(IPage page)
    {
        await page.GotoAsync("/jobs/new");
        await page.GetByLabel("Name", new() { Exact = true }).FillAsync("Looked at");
        await page.GetByLabel("Pieces").FillAsync("600");
        await page.Locator("input[type=file]").SetInputFilesAsync(TestFilm.Draw(program.Workbench, "looked-at.tif"));
        await page.GetByLabel("Your name").FillAsync("Ada");
        await page.GetByRole(AriaRole.Button, new() { Name = "Plan this job" }).ClickAsync();
        await Expect(page.Locator(".line > .station")).ToHaveCountAsync(6, new() { Timeout = 90_000 });
        await page.Locator(".station-link").First.ClickAsync();
        await Expect(page.Locator(".film-zoom")).ToBeVisibleAsync();
    }
}
