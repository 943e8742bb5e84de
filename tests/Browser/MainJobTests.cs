using System.Text;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using SkiaSharp;
using static Microsoft.Playwright.Assertions;

namespace Silkwright.Browser.Tests;

/// <summary>What a person does: describe a job, give its film, read the plan, print it.</summary>
public sealed class MainJobTests(RunningProgram program) : IClassFixture<RunningProgram>
{
    private static readonly string[] SeriousImpacts = ["serious", "critical"];

    [Fact]
    public async Task A_film_is_uploaded_the_plan_is_read_and_printed()
    {
        var page = await program.VisitAsync();
        await DescribeWithFilmAsync(page, "Lighthouse", TestFilm.Draw(program.Workbench, "lighthouse-base.tif"));

        await Expect(page.Locator(".line > .station")).ToHaveCountAsync(6, new() { Timeout = 90_000 });
        await Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("Lighthouse");
        await Expect(page.Locator(".detail svg.cross-section circle.warp").First).ToBeVisibleAsync();

        await page.Locator(".station-link").Nth(4).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Exposure window" })).ToBeVisibleAsync();
        Assert.Contains("station=expose", page.Url, StringComparison.Ordinal);

        await page.GotoAsync("/jobs/lighthouse/print");
        var pdf = await page.PdfAsync(new() { Format = "A4", PrintBackground = true });
        Assert.Equal("%PDF", Encoding.ASCII.GetString(pdf, 0, 4));
        var text = await PdfText.OfAsync(pdf, program.Workbench);
        Assert.Contains("Lighthouse", text, StringComparison.Ordinal);
        Assert.Contains("over mesh", text, StringComparison.Ordinal);
        Assert.Contains("Before exposing", text, StringComparison.Ordinal);

        // The reader ends each page with a form feed: a colour stands on one page.
        Assert.Equal(1, text.Count(sign => sign == '\f'));
    }

    [Fact]
    public async Task The_plan_can_be_read_without_script()
    {
        var page = await program.VisitAsync();
        await DescribeByPhoneAsync(page, "No script");
        await page.RouteAsync("**/look/site.js*", route => route.AbortAsync());
        await page.GotoAsync("/jobs/no-script");
        await page.Locator(".station-link").Nth(5).ClickAsync();

        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Printing life and ink" })).ToBeVisibleAsync();
    }

    [Fact]
    public async Task A_file_that_is_no_film_is_told_with_its_remedy_and_not_kept()
    {
        var before = Directory.Exists(program.FilmsFolder) ? Directory.GetFiles(program.FilmsFolder).Length : 0;
        var poster = Path.Combine(program.Workbench, "poster.tif");
        await File.WriteAllTextAsync(poster, "a text that pretends to be a film", TestContext.Current.CancellationToken);
        var page = await program.VisitAsync();
        await DescribeWithFilmAsync(page, "Poster", poster);

        var problems = page.GetByRole(AriaRole.Alert);
        await Expect(problems).ToContainTextAsync("poster.tif");
        await Expect(problems).ToContainTextAsync("Nothing was kept");
        await Expect(page.GetByLabel("Name", new() { Exact = true })).ToHaveValueAsync("Poster");
        Assert.Equal(before, Directory.GetFiles(program.FilmsFolder).Length);
    }

    [Fact]
    public async Task On_a_phone_the_making_line_runs_downwards_and_nothing_is_cut_off()
    {
        var page = await program.VisitAsync(390, 844);
        await DescribeByPhoneAsync(page, "Phone width");
        var stations = await page.Locator(".line > .station").AllAsync();
        var boxes = new List<LocatorBoundingBoxResult>();
        foreach (var station in stations)
            boxes.Add((await station.BoundingBoxAsync())!);

        Assert.Equal(6, boxes.Count);
        Assert.All(boxes.Zip(boxes.Skip(1)), pair => Assert.True(pair.Second.Y >= pair.First.Y + pair.First.Height - 1));
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= 390, "the page scrolls sideways");
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/jobs/new")]
    [InlineData("/jobs/safe-light?station=film")]
    [InlineData("/jobs/safe-light?station=expose")]
    public async Task Under_safe_light_no_pixel_sends_green_or_blue(string address)
    {
        var page = await program.VisitAsync(820, 1180);
        await DescribeByPhoneAsync(page, "Safe light");
        await page.GotoAsync("/");
        await page.GetByRole(AriaRole.Button, new() { Name = "Safe light" }).ClickAsync();
        await page.GotoAsync(address);
        await Expect(page.Locator(".leak")).ToContainTextAsync("coupon");

        using var picture = SKBitmap.Decode(await page.ScreenshotAsync(new() { FullPage = false }));
        var (green, blue, red) = (0, 0, 0);
        foreach (var pixel in picture.Pixels)
            (green, blue, red) = (Math.Max(green, pixel.Green), Math.Max(blue, pixel.Blue), Math.Max(red, pixel.Red));

        Assert.Equal((0, 0), (green, blue));
        Assert.True(red > 200, "a page in the dark shows nothing");
    }

    [Theory]
    [InlineData("/", false)]
    [InlineData("/jobs", false)]
    [InlineData("/jobs/new", false)]
    [InlineData("/screens", false)]
    [InlineData("/shop", false)]
    [InlineData("/shop/edit", false)]
    [InlineData("/jobs/everyone?station=coat", false)]
    [InlineData("/jobs/everyone?station=expose", false)]
    [InlineData("/jobs/everyone?station=expose", true)]
    public async Task No_page_keeps_anybody_out(string address, bool safeLight)
    {
        var page = await program.VisitAsync();
        await DescribeByPhoneAsync(page, "Everyone");
        if (safeLight)
            await page.GetByRole(AriaRole.Button, new() { Name = "Safe light" }).ClickAsync();
        await page.GotoAsync(address);
        var result = await page.RunAxe();
        var serious = result.Violations.Where(v => SeriousImpacts.Contains(v.Impact, StringComparer.Ordinal)).Select(v => $"{v.Id}: {v.Help} ({v.Nodes.Length}) {v.Nodes[0].Html}");

        Assert.Empty(serious);
        Assert.NotEmpty(result.Passes);
    }

    [Fact]
    public async Task Whatever_is_touched_is_at_least_48_pixels_high()
    {
        var page = await program.VisitAsync(390, 844);
        await DescribeByPhoneAsync(page, "Wet hands");
        var small = await page.EvaluateAsync<string[]>(
            "[...document.querySelectorAll('button, select, .places a, .colours a, .station-link, .job-acts a, .button')].filter(e => e.getClientRects().length && e.getBoundingClientRect().height < 48).map(e => e.outerHTML.slice(0, 90))");

        Assert.Empty(small);
    }

    [Fact]
    public async Task A_screen_is_put_on_record_and_written_to()
    {
        var page = await program.VisitAsync();
        await page.GotoAsync("/screens");
        await page.GetByLabel("Frame's label").FillAsync("B-1");
        await page.GetByLabel("Mesh count").FillAsync("156/in");
        await page.GetByLabel("Thread").FillAsync("64um");
        await page.GetByLabel("Your name").FillAsync("Ada");
        await page.GetByRole(AriaRole.Button, new() { Name = "Put on record" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Degreased" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Write it down" }).ClickAsync();

        await Expect(page.Locator("table.plain tbody tr")).ToHaveCountAsync(1);
        await Expect(page.Locator("table.plain")).ToContainTextAsync("Degreased");
        await Expect(page.Locator(".tally")).ToContainTextAsync("degreased");
    }

    /// <summary>Opens a job without films, describing it first where no test has yet.</summary>
    private static async Task DescribeByPhoneAsync(IPage page, string name)
    {
        if ((await page.GotoAsync($"/jobs/{name.ToLowerInvariant().Replace(' ', '-')}"))!.Ok)
            return;
        await page.GotoAsync("/jobs/new");
        await page.GetByLabel("Name", new() { Exact = true }).FillAsync(name);
        await page.GetByLabel("Pieces").FillAsync("300");
        await page.Locator("select[name=kind]").SelectOptionAsync("fullFrontHalftone");
        await page.GetByLabel("Your name").FillAsync("Ada");
        await page.GetByRole(AriaRole.Button, new() { Name = "Plan this job" }).ClickAsync();
        await Expect(page.Locator(".line > .station")).ToHaveCountAsync(6);
    }

    private static async Task DescribeWithFilmAsync(IPage page, string name, string film)
    {
        await page.GotoAsync("/jobs/new");
        await page.GetByLabel("Name", new() { Exact = true }).FillAsync(name);
        await page.GetByLabel("Pieces").FillAsync("600");
        await page.Locator("input[type=file]").SetInputFilesAsync(film);
        await page.GetByLabel("Your name").FillAsync("Ada");
        await page.GetByRole(AriaRole.Button, new() { Name = "Plan this job" }).ClickAsync();
    }
}
