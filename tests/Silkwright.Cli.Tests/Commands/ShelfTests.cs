using System.Text.Json.Nodes;
using Silkwright.Cli.Tests.Schema;
using Silkwright.Records.Store;

namespace Silkwright.Cli.Tests.Commands;

/// <summary><c>shelf</c> from the outside.</summary>
public sealed class ShelfTests : IDisposable
{
    private static readonly string Demo = House.Of("demo", "shelf.json");

    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task The_document_is_as_its_schema_says_and_nothing_else_is_on_the_output()
    {
        var run = await ShellRun.Of("shelf", Demo, "--json");
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Empty(SchemaCheck.Faults("shelf.json", run.Document));
    }

    [Fact]
    public void The_invented_case_is_as_the_schema_of_cases_says()
    {
        var shelf = JsonNode.Parse(File.ReadAllText(Demo))!.AsObject();
        Assert.StartsWith("An invented shop", (string?)shelf["name"], StringComparison.Ordinal);
        shelf.Remove("name");
        Assert.Empty(SchemaCheck.Faults("shelf-case.json", shelf));
    }

    /// <summary>By hand: A alone 10 + 5 x 2 + 5 x 9 = 65; B alone can't make flags; both 10 + 12 + 5 x 2 + 5 x 3 = 47.</summary>
    [Fact]
    public async Task A_case_small_enough_to_price_by_hand_is_priced_so()
    {
        var file = folder.Write("case.json", """{"emulsions": [{"id": "A", "fixedCostPerMonth": 10}, {"id": "B", "fixedCostPerMonth": 12}], "jobs": [{"id": "flags", "screensPerMonth": 5, "costs": {"A": 2}}, {"id": "tees", "screensPerMonth": 5, "costs": {"A": 9, "B": 3}}]}""");
        var document = (await ShellRun.Of("shelf", file, "--json")).Document;
        Assert.Equal(47, (double)document["monthlyCost"]!, 1e-9);
        Assert.Equal(65 - 47, (double)document["oneFewer"]!["extra"]!, 1e-9);
        Assert.Equal("""{"flags":"A","tees":"B"}""", document["assignments"]!.ToJsonString());
        Assert.False(document.ContainsKey("oneMore"));
    }

    [Fact]
    public async Task The_table_says_what_to_drop_what_to_try_and_what_it_saves_within_100_columns()
    {
        var run = await ShellRun.Of("shelf", Demo);
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.All(["Keep 2 of 5", "Drop Diazo two-part", "Try Ready-to-use fast", "saves", "next best", "one fewer"], said => Assert.Contains(said, run.Output, StringComparison.Ordinal));
        Assert.All(run.Output.Split('\n'), row => Assert.InRange(row.TrimEnd().Length, 0, Surroundings.UsualColumns));
    }

    /// <summary>In the demonstration's case the next best shelf is the best with one more, and its month costs carry the currency where a case names one.</summary>
    [Fact]
    public async Task The_table_tells_a_shelf_once_and_every_amount_with_its_currency()
    {
        Assert.Single((await ShellRun.Of("shelf", Demo)).Output.Split("Capillary film)").Skip(1));
        var file = folder.Write("case.json", """{"currency": "EUR", "emulsions": [{"id": "A", "fixedCostPerMonth": 10, "keptToday": true}, {"id": "B", "fixedCostPerMonth": 2}], "jobs": [{"id": "tees", "screensPerMonth": 5, "costs": {"A": 9, "B": 3}}]}""");
        var output = (await ShellRun.Of("shelf", file)).Output;
        Assert.All(["keeping, EUR", "which costs 55 EUR"], said => Assert.Contains(said, output, StringComparison.Ordinal));
    }

    /// <summary>By hand: 4500 g at 90 is 0.02 a gram and 8 a month, 900 g at 36 is 0.04 a gram: 20 screens of 25 g cost 18 or 20 a month, so the large one pays by 2.</summary>
    [Fact]
    public async Task Sizes_and_intervals_go_in_and_come_out_as_the_schemas_say()
    {
        const string text = """{"currency": "EUR", "emulsions": [{"id": "A", "fixedCostPerMonth": {"value": 10, "low": 8, "high": 12}, "gramsPerScreen": 25, "keptToday": true, "containers": [{"grams": 900, "price": 36}, {"grams": 4500, "price": 90, "fixedCostPerMonth": 8}]}, {"id": "B", "fixedCostPerMonth": 99}], "jobs": [{"id": "tees", "screensPerMonth": 20, "costs": {"A": {"value": 2, "low": 1, "high": 3, "ground": "measuredHere"}, "B": 9}}]}""";
        Assert.Empty(SchemaCheck.Faults("shelf-case.json", JsonNode.Parse(text)!));
        var file = folder.Write("case.json", text);
        var document = (await ShellRun.Of("shelf", file, "--json")).Document;
        Assert.Empty(SchemaCheck.Faults("shelf.json", document));
        Assert.Equal(10 + 8 + (20 * (2 + 0.5)), (double)document["monthlyCost"]!, 1e-9);
        Assert.Equal((4500, 900), ((double)document["uses"]![0]!["container"]!["grams"]!, (double)document["uses"]![0]!["container"]!["next"]!["grams"]!));
        Assert.Equal(2, (double)document["uses"]![0]!["container"]!["next"]!["extra"]!, 1e-9);
        var run = await ShellRun.Of("shelf", file);
        Assert.All(["EUR (", "Buy A by 4 500 g, not 900 g", "2 EUR more a month", "no other shelf told here is cheaper"], said => Assert.Contains(said.Replace(' ', '_'), run.Output.Replace('\u202f', ' ').ReplaceLineEndings(" ").Replace(' ', '_'), StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_job_that_nothing_serves_ends_with_2_and_its_name()
    {
        var file = folder.Write("case.json", """{"emulsions": [{"id": "A", "fixedCostPerMonth": 10}], "jobs": [{"id": "flags", "screensPerMonth": 5, "costs": {}}]}""");
        var run = await ShellRun.Of("shelf", file, "--json");
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains("flags", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_fault_of_a_case_is_told_at_once()
    {
        var file = folder.Write("case.json", """{"emulsions": [{"id": "A", "fixedCostPerMonth": -10}], "jobs": [{"id": "flags", "screensPerMonth": 5, "costs": {"B": 1}}], "most": 0}""");
        var run = await ShellRun.Of("shelf", file);
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains("3 reasons", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Out_of_a_data_folder_each_whole_month_of_jobs_is_a_scenario_and_too_few_are_told()
    {
        var data = Path.Combine(folder.Path, "data");
        var store = await SilkwrightStore.OpenAsync(DataFolder.Open(data), TimeProvider.System, Cancel);
        _ = await store.Shops.SaveAsync("quay", """{ "name": "Quay", "emulsions": [ { "id": "Left", "family": "diazo" }, { "id": "Right", "family": "photopolymer" } ] }""", "Ines", "First", cancel: Cancel);
        foreach (var day in (string[])["2026-01-10", "2026-01-20", "2026-02-10"])
            _ = await store.Jobs.SaveAsync($"job-{day}", Job(day), "Ines", "New", cancel: Cancel);

        var few = await ShellRun.Of("shelf", "--data", data, "--json");
        Assert.Equal((0, ""), (few.ExitCode, few.Error));
        Assert.Null(few.Document["months"]);
        Assert.Contains("Too little history", few.Output, StringComparison.Ordinal);

        _ = await store.Jobs.SaveAsync("march", Job("2026-03-01"), "Ines", "New", cancel: Cancel);
        var run = await ShellRun.Of("shelf", "--data", data, "--json");
        Assert.Empty(SchemaCheck.Faults("shelf.json", run.Document));
        Assert.Equal(["2026-01", "2026-02", "2026-03"], run.Document["months"]!.AsArray().Select(month => (string?)month!["name"]));
        Assert.Contains("2026-02 (33", (await ShellRun.Of("shelf", "--data", data)).Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_data_folder_without_jobs_is_told()
    {
        var store = await SilkwrightStore.OpenAsync(DataFolder.Open(folder.Path), TimeProvider.System, Cancel);
        _ = await store.Shops.SaveAsync("quay", """{ "name": "Quay", "emulsions": [ { "id": "Left", "family": "diazo" } ] }""", "Ines", "First", cancel: Cancel);
        var run = await ShellRun.Of("shelf", "--data", folder.Path);
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains("There is no job to choose a shelf for", run.Error, StringComparison.Ordinal);
    }

    private static string Job(string day) => $$"""{ "name": "Job of {{day}}", "date": "{{day}}", "run": 300, "colours": [ { "name": "White", "ink": "plastisol", "kind": "leftChestSpot" } ] }""";
}
