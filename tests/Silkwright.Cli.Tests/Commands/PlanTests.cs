using Silkwright.Cli.Tests.Schema;

namespace Silkwright.Cli.Tests.Commands;

public sealed class PlanTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    private static string DemoShop => House.Of("demo", "shop.json");

    [Theory]
    [InlineData("phone-enquiry.json")]
    [InlineData("left-chest.json")]
    public async Task A_job_without_films_is_planned_for_the_demonstration_shop(string job)
    {
        var run = await ShellRun.Of("plan", House.Of("demo", "jobs", job), "--shop", DemoShop, "--json");
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Empty(SchemaCheck.Faults("plan.json", run.Document));
    }

    [Fact]
    public async Task Only_ink_and_run_are_required_and_the_plan_says_that_no_shop_was_given()
    {
        var job = folder.Write("job.json", """{"run": 500, "colours": [{"ink": "discharge"}]}""");
        var run = await ShellRun.Of("plan", job, "--json");
        Assert.Equal(0, run.ExitCode);
        Assert.Empty(SchemaCheck.Faults("plan.json", run.Document));
        Assert.Contains("No shop was given", run.Document["notes"]![0]!["text"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_page_for_people_follows_the_making_line_within_100_columns()
    {
        var run = await ShellRun.Of("plan", House.Of("demo", "jobs", "phone-enquiry.json"), "--shop", DemoShop);
        Assert.Equal(0, run.ExitCode);
        var rows = run.Output.Split('\n').Select(row => row.TrimEnd()).ToArray();
        Assert.All(rows, row => Assert.InRange(row.Length, 0, Surroundings.UsualColumns));
        string[] line = ["FILM", "MESH", "COAT", "DRY", "EXPOSE", "WASH OUT", "PRINT", "AFTER", "COST", "BECAUSE", "BEATEN"];
        var at = line.Select(station => Array.FindIndex(rows, row => row.StartsWith($"{station} ", StringComparison.Ordinal))).ToArray();
        Assert.DoesNotContain(-1, at);
        Assert.Equal(at.Order(), at);
        Assert.Contains("WARNING before exposing", rows[at[4]], StringComparison.Ordinal);
        Assert.Contains("EUR", run.Output, StringComparison.Ordinal);
        Assert.Contains("mil)", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_second_colour_names_every_hazard_and_where_the_full_caution_stands()
    {
        var job = folder.Write("job.json", """{"run": 500, "colours": [{"ink": "plastisol"}, {"ink": "plastisol"}]}""");
        var run = await ShellRun.Of("plan", job, "--shop", DemoShop);
        var text = string.Join(' ', run.Output.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        var second = text[text.IndexOf("2 of 2", StringComparison.Ordinal)..];
        Assert.Contains("WARNING before exposing: Ultraviolet and violet light burn eyes and skin", second, StringComparison.Ordinal);
        Assert.Contains("both blind and burn. In full at colour 1, Colour 1.", second, StringComparison.Ordinal);
        Assert.DoesNotContain("Closed cover", second, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_exposure_that_nobody_measured_asks_for_a_step_test_before_its_times()
    {
        var untested = folder.Write("job.json", """{"run": 500, "colours": [{"ink": "plastisol"}]}""");
        var run = await ShellRun.Of("plan", untested);
        var first = run.Output.IndexOf("MAKE A STEP TEST BEFORE EXPOSING", StringComparison.Ordinal);
        Assert.InRange(first, 0, run.Output.IndexOf("Least that cures", StringComparison.Ordinal));
        var tested = await ShellRun.Of("plan", House.Of("demo", "jobs", "phone-enquiry.json"), "--shop", DemoShop);
        Assert.DoesNotContain("MAKE A STEP TEST", tested.Output, StringComparison.Ordinal);
    }

    /// <summary>A demonstration in small: its film is not kept, so the plan of its job draws it.</summary>
    [Fact]
    public async Task A_job_of_the_demonstration_draws_the_films_that_are_missing_and_its_head_tells_what_is_not_held()
    {
        foreach (var name in new[] { "artwork", "jobs" })
            Directory.CreateDirectory(Path.Combine(folder.Path, name));
        folder.Write("screens.json", "{}");
        folder.Write("artwork/small.json", """
            {"name": "small", "widthMm": 30, "heightMm": 30, "dpi": 600,
             "films": [{"file": "small.tif", "shapes": [{"disc": [15, 15, 5]}, {"line": [5, 5, 25, 5], "lineMm": 0.05}]}]}
            """);
        var job = folder.Write("jobs/job.json", """{"run": 500, "colours": [{"name": "Line", "ink": "waterBased", "film": "../films/small.tif"}]}""");
        var run = await ShellRun.Of("plan", job);
        Assert.True(run.ExitCode == 0, run.Error);
        Assert.Contains("drawing small.tif: done", run.Error, StringComparison.Ordinal);
        var head = run.Output[..run.Output.IndexOf("1 of 1", StringComparison.Ordinal)];
        Assert.Contains("DOES NOT HOLD the artwork. Thicken what is finer to", head, StringComparison.Ordinal);
        Assert.DoesNotContain("waterBased", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_date_of_a_job_without_one_is_today()
    {
        var job = folder.Write("job.json", """{"run": 500, "colours": [{"ink": "plastisol"}]}""");
        var run = await ShellRun.Of(new StoppedClock(), "plan", job);
        Assert.Contains("planned for 2031-02-03", run.Output, StringComparison.Ordinal);
    }

    private sealed class StoppedClock : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => new(2031, 2, 3, 12, 0, 0, TimeSpan.Zero);

        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;
    }
}
