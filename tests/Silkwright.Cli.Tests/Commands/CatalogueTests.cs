using Silkwright.Cli.Tests.Schema;

namespace Silkwright.Cli.Tests.Commands;

/// <summary><c>catalogue</c>, and <c>choose --catalogue</c>, from the outside.</summary>
public sealed class CatalogueTests : IDisposable
{
    private static readonly string Demo = House.Of("demo", "catalogue.csv");

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
}
