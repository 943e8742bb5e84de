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
    public async Task A_second_colour_does_not_write_the_same_caution_out_again()
    {
        var job = folder.Write("job.json", """{"run": 500, "colours": [{"ink": "plastisol"}, {"ink": "plastisol"}]}""");
        var run = await ShellRun.Of("plan", job, "--shop", DemoShop);
        Assert.Equal(2, run.Output.Split("WARNING before exposing").Length - 1);
        Assert.Single(run.Output.Split('\n'), row => row.Contains("WARNING before exposing: as told above", StringComparison.Ordinal));
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
