using System.Text.Json.Nodes;
using Silkwright.Cli.Tests.Schema;

namespace Silkwright.Cli.Tests.Commands;

/// <summary>Step tests from files, as a shop writes them.</summary>
public sealed class ExposeTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("expose-test.json", "test", "step-test.csv")]
    [InlineData("expose-test.json", "test", "step-test-units.csv")]
    [InlineData("expose-test.json", "test", "exposure-case.json")]
    [InlineData("expose-window.json", "window", "exposure-case.json")]
    [InlineData("expose-fit.json", "fit", "cured-depths.csv")]
    [InlineData("expose-drift.json", "drift", null)]
    public async Task A_file_is_answered_as_the_schema_says(string schema, string verb, string? file)
    {
        string[] from = file is null ? ["--shop", House.Of("demo", "shop.json")] : [House.Of("demo", file)];
        var run = await ShellRun.Of(["expose", verb, .. from, "--json"]);
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Empty(SchemaCheck.Faults(schema, run.Document));
        var people = await ShellRun.Of(["expose", verb, .. from]);
        Assert.Equal((0, ""), (people.ExitCode, people.Error));
    }

    [Fact]
    public async Task The_case_of_the_demonstration_is_as_its_schema_says() => Assert.Empty(SchemaCheck.Faults(
        "expose-case.json", JsonNode.Parse(await File.ReadAllTextAsync(House.Of("demo", "exposure-case.json"), TestContext.Current.CancellationToken))!.AsObject()));

    /// <summary>The wedge rule: step 7 at 60 s is a right exposure; the line that closes two steps above leaves the aim near it. Damp strips change nothing.</summary>
    [Fact]
    public async Task Strips_place_the_aim_and_a_damp_one_teaches_nothing()
    {
        const string Dry = "seconds;solidStep;squeegeeSideSoft;damp\n42;6;1;0\n60;7;0;0\n85;8;0;\n";
        var dry = await AimAsync(Dry);
        Assert.InRange(dry, 45, 100);
        Assert.Equal(dry, await AimAsync(Dry + "300;2;1;1\n"), 1e-9);
    }

    [Fact]
    public async Task Cured_depths_give_a_working_curve_of_the_lamp()
    {
        var document = (await ShellRun.Of("expose", "test", House.Of("demo", "step-test-units.csv"), "--json")).Document;
        // 28, 49, 71 and 94 µm at 60, 85, 120 and 170 units: rlm of MASS in R, as in RobustLinearModelTests, gives 63.41485783 and 38.90131323
        Assert.Equal(63.41485783, document["workingCurve"]!["penetrationDepthUm"]!.GetValue<double>(), 1e-6);
        Assert.Equal(38.90131323, document["workingCurve"]!["criticalUnits"]!.GetValue<double>(), 1e-6);
        Assert.Null(document["leastSeconds"]);
    }

    [Theory]
    [InlineData("solidStep\n7\n", "no column seconds")]
    [InlineData("seconds,units\n7,7\n", "seconds and units")]
    [InlineData("seconds,solidStep,damp,on\n60,6.5,maybe,4 May\n", "whole number|neither 0 nor 1|not a date")]
    [InlineData("seconds\n\n", "no strip in it")]
    [InlineData("seconds,solidStep\n,7\n", "seconds is missing")]
    public async Task Every_fault_of_a_table_is_told_at_once(string text, string says)
    {
        var run = await ShellRun.Of("expose", "test", await FileAsync(text));
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.All(says.Split('|'), fault => Assert.Contains(fault, run.Error, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Units_without_a_beginning_and_a_shop_in_two_ways_are_faults()
    {
        var units = await ShellRun.Of("expose", "ladder", "--counts", "units");
        Assert.Equal(2, units.ExitCode);
        Assert.Contains("--around", units.Error, StringComparison.Ordinal);
        Assert.Equal(2, (await ShellRun.Of("expose", "drift")).ExitCode);
    }

    /// <summary>A point lamp stands 0.6 to 1.5 m from the glass, a work lamp 0.3 to 0.6 (common practice, no source); an array close to it.</summary>
    [Theory]
    [InlineData("metalHalide", "1mm", 2)]
    [InlineData("metalHalide", "600mm", 0)]
    [InlineData("halogen", "50mm", 2)]
    [InlineData("halogen", "300mm", 0)]
    [InlineData("ledArray", "45mm", 0)]
    public async Task A_lamp_stands_where_such_lamps_can(string lamp, string distance, int exit)
    {
        var run = await ShellRun.Of("expose", "window", "--lamp", lamp, "--distance", distance);
        Assert.Equal(exit, run.ExitCode);
        Assert.Equal(exit == 2, run.Error.Contains("where:  --distance", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_case_with_a_lamp_on_the_glass_is_told_how_near_it_may_stand()
    {
        var run = await ShellRun.Of("expose", "window", await FileAsync("""{"mesh": {"countPerCm": 120, "threadUm": 34}, "emulsion": {"family": "diazo"}, "lamp": {"kind": "metalHalide", "distanceMm": 1}}"""));
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("200", run.Error, StringComparison.Ordinal);
    }

    /// <summary>The coat tells its own bleaching: the more of it bleaches, the less a thick coat asks beside a thin one.</summary>
    [Fact]
    public async Task A_case_may_tell_how_its_coat_bleaches()
    {
        async Task<double> LeastAsync(int percent) => (await ShellRun.Of("expose", "window", await FileAsync(
            $$"""{"mesh": {"countPerCm": 120, "threadUm": 34, "dyed": true}, "coat": {"eomUm": 60}, "emulsion": {"family": "dualCure", "penetrationDepthUm": 50, "criticalDoseMjPerCm2": 20, "bleachingPercent": {{percent}}, "bleachDoseMjPerCm2": 20}, "lamp": {"kind": "ledArray"} }"""),
            "--json")).Document["leastSeconds"]!["value"]!.GetValue<double>();
        Assert.True(await LeastAsync(90) < 0.8 * await LeastAsync(0));
    }

    [Fact]
    public async Task Damp_strips_of_a_machine_that_counts_units_are_answered_in_units()
    {
        var strips = await FileAsync("units;solidStep;damp\n800;5;1\n1200;6;1\n");
        var window = (await ShellRun.Of("expose", "test", strips, "--json")).Document;
        Assert.NotNull(window["leastUnits"]);
        Assert.Null(window["leastSeconds"]);
        var ladder = await ShellRun.Of("expose", "ladder", "--after", strips);
        Assert.Equal(2, ladder.ExitCode);
        Assert.Contains("--around", ladder.Error, StringComparison.Ordinal);
    }

    /// <summary>A gauze finer than the fitted light was told: the note's own command follows its photons.</summary>
    [Theory]
    [InlineData("--count 200/cm --thread 20um --mesh-colour dyed")]
    [InlineData("--count 61/cm --thread 64um --eom 90..110um --lamp tubeBank --family photopolymer")]
    public async Task Outside_the_fitted_light_the_answer_tells_the_command_that_follows_photons(string line)
    {
        var window = (await ShellRun.Of(["expose", "window", .. line.Split(' '), "--json"])).Document;
        var note = window["notes"]!.AsArray().Select(entry => (string)entry!["text"]!).Single(text => text.StartsWith("Outside the range of the fitted light", StringComparison.Ordinal));
        var command = note[(note.IndexOf("silkwright light edge", StringComparison.Ordinal) + "silkwright ".Length)..];
        var run = await ShellRun.Of([.. command.Split(' '), "--photons", "2000", "--json"]);
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Equal("silkwright/light-edge/1", (string?)run.Document["schema"]);
    }

    [Fact]
    public async Task Inside_the_fitted_light_nothing_of_the_kind_is_told() =>
        Assert.DoesNotContain("fitted light", (await ShellRun.Of("expose", "window", "--count", "120/cm", "--thread", "34um", "--eom", "5um")).Output, StringComparison.Ordinal);

    private async Task<double> AimAsync(string table)
    {
        var run = await ShellRun.Of("expose", "test", await FileAsync(table), "--lamp", "ledArray", "--mesh-colour", "dyed", "--line", "150um", "--json");
        Assert.Equal("", run.Error);
        return run.Document["aimSeconds"]!["value"]!.GetValue<double>();
    }

    private async Task<string> FileAsync(string text)
    {
        var path = Path.Combine(folder.Path, "strips.csv");
        await File.WriteAllTextAsync(path, text, TestContext.Current.CancellationToken);
        return path;
    }
}
