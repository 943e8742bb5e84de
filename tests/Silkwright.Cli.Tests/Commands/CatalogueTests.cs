using Silkwright.Cli.Tests.Schema;
using Silkwright.Records.Store;

namespace Silkwright.Cli.Tests.Commands;

/// <summary><c>catalogue</c>, and <c>choose --catalogue</c>, from the outside.</summary>
public sealed class CatalogueTests : IDisposable
{
    private const string Job = """{ "name": "Phone", "run": 300, "colours": [ { "name": "White", "ink": "plastisol", "kind": "leftChestSpot" } ] }""";

    private static readonly string Demo = House.Of("demo", "catalogue.csv");

    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task The_document_is_as_its_schema_says_and_nothing_else_is_on_the_output()
    {
        var run = await ShellRun.Of("catalogue", "show", Demo, "--json");
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Empty(SchemaCheck.Faults("catalogue.json", run.Document));
        Assert.InRange(run.Document["emulsions"]!.AsArray().Count, 6, 8);
    }

    [Fact]
    public async Task The_table_marks_grounds_shows_conflicts_and_asks_what_nobody_knows_within_100_columns()
    {
        var run = await ShellRun.Of("catalogue", "show", Demo, "linnet 28");
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.All(["pot life once mixed at 21 °C", "■", "▤ CONFLICTS", "beside it", "Nobody knows, so measure:", "resistance to UV ink"], said => Assert.Contains(said, run.Output, StringComparison.Ordinal));
        Assert.DoesNotContain("Siskin", run.Output, StringComparison.Ordinal);
        Assert.All(run.Output.Split('\n'), row => Assert.InRange(row.TrimEnd().Length, 0, Surroundings.UsualColumns));
    }

    [Fact]
    public async Task The_template_is_a_catalogue_to_fill_in()
    {
        var run = await ShellRun.Of("catalogue", "template");
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.StartsWith("emulsion,property,value,ground,source,date", run.Output, StringComparison.Ordinal);
        var shown = await ShellRun.Of("catalogue", "show", folder.Write("filled.csv", run.Output.Replace(",solidsPercent,,,,,", "Wagtail,solidsPercent,33%,measuredHere,oven,2026-11-02,", StringComparison.Ordinal)), "--json");
        Assert.Equal(33, (double)shown.Document["emulsions"]![0]!["values"]![0]!["used"]!["value"]!);
    }

    [Fact]
    public async Task Choose_weighs_the_catalogues_emulsions_in_place_of_the_usual_kinds()
    {
        var run = await ShellRun.Of("choose", "--ink", "discharge", "--run", "400", "--catalogue", Demo, "--json");
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Empty(SchemaCheck.Faults("choose.json", run.Document));
        var named = run.Document["candidates"]!.AsArray().Concat(run.Document["ruledOut"]!.AsArray()).Select(one => (string)one!["emulsion"]!).ToArray();
        Assert.Contains("Linnet 28", named);
        Assert.DoesNotContain("a dual-cure", named);
        Assert.Contains("Whimbrel is left out", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task With_a_shop_they_are_weighed_beside_its_own()
    {
        var run = await ShellRun.Of("choose", "--ink", "plastisol", "--run", "400", "--shop", House.Of("demo", "shop.json"), "--catalogue", Demo, "--json");
        var named = run.Document["candidates"]!.AsArray().Select(one => (string)one!["emulsion"]!).ToArray();
        Assert.Contains("Wren 47", named);
        Assert.Contains("Siskin 48", named);
    }

    [Fact]
    public async Task Faults_end_with_2_the_line_the_column_and_nothing_on_the_output()
    {
        var file = folder.Write("c.csv", "emulsion;property;value;ground;source;date\nA;solidsPercent;1,5;datasheet;sheet;\nA;family;diazo;guess;;\n");
        var run = await ShellRun.Of("catalogue", "show", file);
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains("3 reasons", run.Error, StringComparison.Ordinal);
        Assert.Contains("c.csv: line 2, column 3 (value)", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_emulsion_that_is_not_in_it_is_told_with_those_that_are()
    {
        var run = await ShellRun.Of("catalogue", "show", Demo, "Nightjar");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("Siskin 48", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_kept_is_shown_with_who_and_when_and_a_change_is_told()
    {
        var data = Path.Combine(folder.Path, "data");
        var first = await ShellRun.Of("catalogue", "keep", Demo, "--data", data, "--by", "Ines", "--json");
        Assert.Equal((0, $"New records are begun in {data}."), (first.ExitCode, first.Error.TrimEnd()));
        Assert.Empty(SchemaCheck.Faults("catalogue.json", first.Document));
        Assert.Equal((1, "Ines"), ((int)first.Document["kept"]!["revision"]!, (string)first.Document["kept"]!["savedBy"]!));
        Assert.Contains("Siskin 48", first.Document["changes"]!["new"]!.AsArray().Select(name => (string)name!));

        var text = (await File.ReadAllTextAsync(Demo, Cancel)).Replace("solidsPercent,43.5%,measuredHere", "solidsPercent,41%,measuredHere", StringComparison.Ordinal);
        var changed = folder.Write("changed.csv", text);
        var told = await ShellRun.Of("catalogue", "keep", changed, "--data", data, "--by", "Bram", "--only-tell");
        Assert.Contains("Changed: Siskin 48", told.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("Kept by", told.Output, StringComparison.Ordinal);
        Assert.Contains("Kept by Bram", (await ShellRun.Of("catalogue", "keep", changed, "--data", data, "--by", "Bram")).Output, StringComparison.Ordinal);

        var shown = await ShellRun.Of("catalogue", "show", "siskin 48", "--data", data, "--json");
        Assert.Empty(SchemaCheck.Faults("catalogue.json", shown.Document));
        Assert.Equal((2, "Bram"), ((int)shown.Document["kept"]!["revision"]!, (string)shown.Document["kept"]!["savedBy"]!));
        var solids = Assert.Single(shown.Document["emulsions"]!.AsArray())!["values"]!.AsArray().First(value => (string)value!["property"]! == "solidsPercent")!;
        Assert.Equal(41, (double)solids["used"]!["value"]!);
        Assert.Contains("Kept by Bram", (await ShellRun.Of("catalogue", "show", "--data", data)).Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nothing_kept_is_a_problem_with_a_remedy_and_so_is_a_file_beside_a_folder()
    {
        _ = await SilkwrightStore.OpenAsync(DataFolder.Open(Path.Combine(folder.Path, "empty")), TimeProvider.System, Cancel);
        var none = await ShellRun.Of("catalogue", "show", "--data", Path.Combine(folder.Path, "empty"));
        Assert.Equal((2, ""), (none.ExitCode, none.Output));
        Assert.Contains("silkwright catalogue keep", none.Error, StringComparison.Ordinal);
        Assert.Equal(2, (await ShellRun.Of("catalogue", "show", Demo, "Linnet 28", "--data", Path.Combine(folder.Path, "empty"))).ExitCode);
        Assert.Equal(2, (await ShellRun.Of("catalogue", "show")).ExitCode);
        Assert.Equal(2, (await ShellRun.Of("catalogue", "keep", Demo, "--data", Path.Combine(folder.Path, "empty"), "--by", " ")).ExitCode);
    }

    [Fact]
    public async Task A_plan_holds_the_catalogues_emulsions_beside_the_shops_and_says_so()
    {
        var job = folder.Write("job.json", Job);
        var shop = folder.Write("shop.json", """{ "name": "Quay", "emulsions": [ { "id": "Linnet 28", "family": "diazo", "solidsPercent": 31 } ] }""");
        var run = await ShellRun.Of("plan", job, "--shop", shop, "--catalogue", Demo, "--json");
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Empty(SchemaCheck.Faults("plan.json", run.Document));
        var colour = run.Document["colours"]![0]!;
        var named = colour["beaten"]!.AsArray().Select(one => (string?)one!["emulsion"]).Append((string?)colour["emulsion"]).ToArray();
        Assert.Contains("Linnet 28", named);
        Assert.Contains("Siskin 48", named);
        var notes = run.Document["notes"]!.AsArray().Select(note => (string)note!["text"]!).ToArray();
        Assert.Contains(notes, note => note.StartsWith("Weighed out of the catalogue beside the shop's own", StringComparison.Ordinal));
        Assert.Contains(notes, note => note.StartsWith("Linnet 28:", StringComparison.Ordinal) && note.Contains("price of a container", StringComparison.Ordinal));
        Assert.DoesNotContain(notes, note => note.StartsWith("Linnet 28:", StringComparison.Ordinal) && note.Contains("solids", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_kept_shop_knows_what_the_kept_catalogue_knows_and_weighs_its_others_where_asked()
    {
        var data = Path.Combine(folder.Path, "data");
        var job = folder.Write("job.json", Job);
        var store = await SilkwrightStore.OpenAsync(DataFolder.Open(data), TimeProvider.System, Cancel);
        _ = await store.Shops.SaveAsync("quay", """{ "name": "Quay", "emulsions": [ { "id": "Linnet 28", "family": "diazo" } ] }""", "Ines", "First look round", cancel: Cancel);
        _ = await ShellRun.Of("catalogue", "keep", Demo, "--data", data, "--by", "Ines");

        var plan = (await ShellRun.Of("plan", job, "--data", data, "--json")).Document;
        Assert.Contains(plan["notes"]!.AsArray(), note => (string)note!["text"]! is { } text && text.Contains("solids by weight 28 %, ", StringComparison.Ordinal)
            && text.Contains("(invented sheet, edition 1, 2024-03-12)", StringComparison.Ordinal) && (string?)note["ground"] == "datasheet");
        Assert.Empty(plan["colours"]![0]!["beaten"]!.AsArray());

        var choice = await ShellRun.Of("choose", "--ink", "plastisol", "--run", "300", "--data", data, "--kept-catalogue", "--json");
        Assert.Contains("Siskin 48", choice.Document["candidates"]!.AsArray().Select(one => (string?)one!["emulsion"]));
        Assert.Contains("solids by weight 28 %", choice.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("none is named", "--kept-catalogue")]
    [InlineData("No catalogue is kept here yet", "--kept-catalogue", "--data", "empty")]
    [InlineData("Two catalogues are asked for", "--kept-catalogue", "--data", "empty", "--catalogue", "c.csv")]
    public async Task A_catalogue_that_is_nowhere_is_told_with_what_to_do(string said, params string[] options)
    {
        _ = await SilkwrightStore.OpenAsync(DataFolder.Open(Path.Combine(folder.Path, "empty")), TimeProvider.System, Cancel);
        var at = options.Select(option => option is "empty" or "c.csv" ? Path.Combine(folder.Path, option) : option);
        var run = await ShellRun.Of(["choose", "--ink", "plastisol", "--run", "300", .. at]);
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains(said, run.Error, StringComparison.Ordinal);
    }
}
