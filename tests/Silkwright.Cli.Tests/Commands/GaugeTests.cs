using Silkwright.Cli.Tests.Schema;
using Silkwright.Records.Store;

namespace Silkwright.Cli.Tests.Commands;

public sealed class GaugeTests
{
    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    private static readonly string Study = House.Of("demo", "gauge-study.csv");
    private static readonly string History = House.Of("demo", "gauge-history.csv");

    [Fact]
    public async Task The_documents_are_as_their_schemas_say()
    {
        using var folder = new TemporaryFolder();
        var missing = Path.Combine(folder.Path, "missing.csv");
        await File.WriteAllLinesAsync(missing, (await File.ReadAllLinesAsync(Study, Cancel)).Where((_, i) => i % 9 != 4), Cancel);
        foreach (var (schema, line) in new (string, string[])[]
        {
            ("gauge-study.json", ["gauge", "study", Study, "--wanted", "0.5um"]), ("gauge-study.json", ["gauge", "study", missing]), ("gauge-chart.json", ["gauge", "chart", History]), ("gauge-read.json", ["gauge", "read", History]),
        })
        {
            var run = await ShellRun.Of([.. line, "--json"]);
            Assert.Equal((0, ""), (run.ExitCode, run.Error));
            Assert.Empty(SchemaCheck.Faults(schema, run.Document));
        }
    }

    [Theory]
    [InlineData("study", "gauge-study.csv", "distinct classes")]
    [InlineData("chart", "gauge-history.csv", "New trough long round coats")]
    [InlineData("read", "gauge-history.csv", "given back")]
    public async Task A_table_for_people_fits_100_columns(string verb, string file, string says)
    {
        var run = await ShellRun.Of("gauge", verb, House.Of("demo", file));
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Contains(says, run.Output, StringComparison.Ordinal);
        Assert.All(run.Output.Split('\n'), row => Assert.InRange(row.TrimEnd().Length, 0, Surroundings.UsualColumns));
    }

    [Fact]
    public async Task The_file_that_is_read_is_not_written_over_and_one_that_cannot_be_written_is_told()
    {
        using var folder = new TemporaryFolder();
        var own = Path.Combine(folder.Path, "history.csv");
        File.Copy(History, own);
        var before = await File.ReadAllTextAsync(own, Cancel);
        foreach (var (target, says) in new[] { (own, "is the file that is read"), (Path.Combine(folder.Path, "nowhere", "back.csv"), "can't be written") })
        {
            var run = await ShellRun.Of("gauge", "read", own, "--given-back", target);
            Assert.Equal(2, run.ExitCode);
            Assert.Contains(says, run.Error, StringComparison.Ordinal);
        }

        Assert.Equal(before, await File.ReadAllTextAsync(own, Cancel));
    }

    [Fact]
    public async Task A_decimal_comma_among_commas_is_told_and_half_a_number_is_not_taken()
    {
        using var folder = new TemporaryFolder();
        var file = folder.Write("commas.csv", "screen,eom (um)\nS1,13,4\nS1,14,2\n");
        var run = await ShellRun.Of("gauge", "read", file);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("This line has 3 values, and the header 2 names.", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_kept_is_charted_from_the_records_and_what_is_given_back_is_written()
    {
        using var folder = new TemporaryFolder();
        var (data, back) = (Path.Combine(folder.Path, "data"), Path.Combine(folder.Path, "back.csv"));
        var store = await SilkwrightStore.OpenAsync(DataFolder.Open(data), TimeProvider.System, Cancel);
        _ = await store.Shops.SaveAsync("quay", """{ "name": "Quay" }""", "Ines", "First look round", cancel: Cancel);
        foreach (var says in new[] { "100 new, 0 kept before.", "0 new, 100 kept before" })
        {
            var run = await ShellRun.Of("gauge", "read", History, "--data", data, "--by", "Ines", "--given-back", back);
            Assert.Equal(0, run.ExitCode);
            Assert.Contains(says, run.Output, StringComparison.Ordinal);
        }

        Assert.Equal(3, (await File.ReadAllLinesAsync(back, Cancel)).Length);
        var kept = (await ShellRun.Of("gauge", "chart", "--data", data, "--json")).Document;
        var told = (await ShellRun.Of("gauge", "chart", History, "--json")).Document;
        Assert.Equal(told["says"]!.ToJsonString(), kept["says"]!.ToJsonString());
    }

    [Fact]
    public async Task A_file_of_which_nothing_was_taken_ends_with_2_and_its_rows_are_told()
    {
        using var folder = new TemporaryFolder();
        var run = await ShellRun.Of("gauge", "read", folder.Write("none.csv", "screen,coated (um)\nS-1,many\nS-2,few\n"));
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("given back", run.Output, StringComparison.Ordinal);
        Assert.Contains("No reading of the file was taken", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_without_a_unit_ends_with_2_and_is_read_with_one()
    {
        using var folder = new TemporaryFolder();
        var file = Path.Combine(folder.Path, "f.csv");
        await File.WriteAllTextAsync(file, "screen,coated\nS-1,3.2\n", Cancel);
        var run = await ShellRun.Of("gauge", "read", file);
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains("unit", run.Error, StringComparison.Ordinal);
        Assert.Equal(81.28, (await ShellRun.Of("gauge", "read", file, "--unit", "mil", "--json")).Document["entries"]![0]!["coatedUm"]!.GetValue<double>(), 1e-9);
    }
}
