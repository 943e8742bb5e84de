using System.Text.Json.Nodes;
using Silkwright.Cli.Tests.Schema;

namespace Silkwright.Cli.Tests.Commands;

public sealed class CoatTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("coat-predict.json", "predict", "--cases", "coat-cases.csv")]
    [InlineData("coat-readings.json", "readings", "--wanted", "1um")]
    public async Task The_document_is_as_its_schema_says(string schema, string verb, string option, string value)
    {
        var run = await ShellRun.Of("coat", verb, "--readings", House.Of("demo", "coat-readings.csv"), option, value.EndsWith(".csv", StringComparison.Ordinal) ? House.Of("demo", value) : value, "--json");

        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Empty(SchemaCheck.Faults(schema, run.Document));
        Assert.NotNull(run.Document["gauge"]!["repeatabilityUm"]);
    }

    [Fact]
    public async Task The_next_reading_comes_best_first_as_its_schema_says()
    {
        var run = await ShellRun.Of("coat", "next", "--readings", House.Of("demo", "coat-readings.csv"), "--cases", House.Of("demo", "coat-cases.csv"), "--json");

        Assert.Empty(SchemaCheck.Faults("coat-next.json", run.Document));
        double[] worths = [.. run.Document["readings"]!.AsArray().Select(reading => (double)reading!["shrinksUmPerMinute"]!)];
        Assert.Equal(5, worths.Length);
        Assert.Equal(worths.OrderDescending(), worths);
        Assert.All(worths, worth => Assert.True(worth > 0));
    }

    [Fact]
    public async Task A_shop_that_shares_nothing_is_left_out_of_the_next_reading()
    {
        string[] asked = ["coat", "next", "--readings", House.Of("demo", "coat-readings.csv"), "--cases", House.Of("demo", "coat-cases.csv"), "--without"];
        var run = await ShellRun.Of([.. asked, "cellar prints", "--json"]);
        Assert.Empty(SchemaCheck.Faults("coat-next.json", run.Document));
        Assert.Contains("Cellar Prints shares nothing", run.Document["notes"]!.ToJsonString(), StringComparison.Ordinal);
        Assert.Equal(2, (await ShellRun.Of([.. asked, "Attic"])).ExitCode);
    }

    [Theory]
    [InlineData("--shop", "Harbour Shirts")]
    [InlineData("--tolerance", "2um")]
    public async Task An_aimed_coat_is_as_its_schema_says(string option, string value)
    {
        var run = await ShellRun.Of("coat", "aim", "--wanted", "14um", "--emulsion", "Copper dual", "--count", "61/cm", "--thread", "64um", "--readings", House.Of("demo", "coat-readings.csv"), option, value, "--json");

        Assert.Equal("", run.Error);
        Assert.Empty(SchemaCheck.Faults("coat-aim.json", run.Document));
    }

    [Fact]
    public async Task Experience_is_written_as_its_schema_says_and_a_plan_starts_from_it()
    {
        var path = Path.Combine(folder.Path, "experience.json");
        var made = await ShellRun.Of("coat", "experience", "--readings", House.Of("demo", "coat-readings.csv"), "--without", "Cellar Prints", "--out", path, "--json");

        Assert.Equal((0, ""), (made.ExitCode, made.Error));
        Assert.Empty(SchemaCheck.Faults("coat-experience.json", made.Document));
        Assert.Equal(2, (int)made.Document["shops"]!);
        var predicted = await ShellRun.Of("coat", "predict", "--readings", House.Of("demo", "coat-readings.csv"), "--cases", House.Of("demo", "coat-cases.csv"), "--experience", House.Of("demo", "coat-experience.json"), "--json");
        Assert.Contains("elsewhere taught", predicted.Document["notes"]!.ToJsonString(), StringComparison.Ordinal);
        var plan = await ShellRun.Of("plan", House.Of("demo", "jobs", "phone-enquiry.json"), "--experience", path, "--json");
        Assert.Equal("measuredElsewhere", (string?)plan.Document["colours"]![0]!["coat"]!["eomUm"]!["ground"]);
        Assert.Equal(2, (await ShellRun.Of("coat", "predict", "--readings", House.Of("demo", "coat-readings.csv"), "--cases", House.Of("demo", "coat-cases.csv"), "--experience", path)).ExitCode);
    }

    /// <summary>The file is the program's own work: made anew from its readings it is the same, so that no change of marks leaves it behind.</summary>
    [Fact]
    public async Task The_demonstrations_experience_is_what_its_readings_teach()
    {
        var made = (await ShellRun.Of("coat", "experience", "--readings", Elsewhere, "--json")).Document;
        var kept = JsonNode.Parse(await File.ReadAllTextAsync(Experience, TestContext.Current.CancellationToken))!.AsObject();
        Assert.True(kept.Remove("invented"));
        Assert.Equal(kept["parts"]!.ToJsonString(), made["parts"]!.ToJsonString());
        Assert.Equal(((int)kept["readings"]!, (int)kept["shops"]!), ((int)made["readings"]!, (int)made["shops"]!));
        Assert.All(kept["effects"]!.AsArray().Zip(made["effects"]!.AsArray()), pair =>
        {
            Assert.Equal((string)pair.First!["name"]!, (string)pair.Second!["name"]!);
            Assert.Equal((double)pair.First["deviations"]!, (double)pair.Second["deviations"]!, 1e-6);
        });
    }

    /// <summary>Its readings are known again in it: turned round, under other names, and wherever the two come together.</summary>
    [Theory]
    [InlineData("predict", "--cases")]
    [InlineData("next", "--cases")]
    [InlineData("aim", "--wanted")]
    [InlineData("experience", null)]
    public async Task The_demonstrations_experience_is_known_again_beside_its_readings(string verb, string? option)
    {
        var lines = await File.ReadAllLinesAsync(Elsewhere, TestContext.Current.CancellationToken);
        var turned = Path.Combine(folder.Path, "turned.csv");
        await File.WriteAllLinesAsync(turned, [lines[0], .. lines[1..].Reverse().Select(line => line.Replace("Loft Nine", "Attic Ten", StringComparison.Ordinal))], TestContext.Current.CancellationToken);
        string[] asked = option switch
        {
            "--cases" => ["--cases", House.Of("demo", "coat-cases.csv"), "--experience", Experience],
            "--wanted" => ["--wanted", "14um", "--emulsion", "Copper dual", "--count", "61/cm", "--thread", "64um", "--experience", Experience],
            _ => [Experience],
        };
        var run = await ShellRun.Of(["coat", verb, .. asked, "--readings", turned]);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("count twice", run.Error, StringComparison.Ordinal);
    }

    private static string Elsewhere => House.Of("demo", "coat-readings-elsewhere.csv");

    private static string Experience => House.Of("demo", "coat-experience.json");

    [Fact]
    public async Task What_the_readings_taught_is_drawn_into_a_file()
    {
        var path = Path.Combine(folder.Path, "coats.svg");
        var run = await ShellRun.Of("coat", "predict", "--readings", House.Of("demo", "coat-readings.csv"), "--cases", House.Of("demo", "coat-cases.csv"), "--picture", path);

        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        var drawn = System.Xml.Linq.XDocument.Load(path).ToString();
        Assert.Contains("coat-held", drawn, StringComparison.Ordinal);
        Assert.Contains("Harbour Shirts, Ada", drawn, StringComparison.Ordinal);
        Assert.Equal(2, (await ShellRun.Of("coat", "predict", "--readings", House.Of("demo", "coat-readings.csv"), "--cases", House.Of("demo", "coat-cases.csv"), "--picture", "coats.png")).ExitCode);
    }

    [Fact]
    public async Task A_shop_whose_document_shares_nothing_is_refused()
    {
        var shop = folder.Write("shop.json", "{\"name\": \"Cellar\", \"sharesExperience\": false}");
        var run = await ShellRun.Of("coat", "experience", "--shop", shop);

        Assert.Equal(2, run.ExitCode);
        Assert.Contains("Cellar shares nothing", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_person_that_no_reading_names_is_told_with_those_there_are()
    {
        var run = await ShellRun.Of("coat", "aim", "--wanted", "14um", "--emulsion", "Copper dual", "--count", "61/cm", "--thread", "64um", "--shop", "Harbour Shirts", "--operator", "Zed", "--readings", House.Of("demo", "coat-readings.csv"));

        Assert.Equal(2, run.ExitCode);
        Assert.Contains("Ada", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_coat_thinner_than_its_mesh_ends_with_2_and_its_line()
    {
        var readings = folder.Write("readings.csv", "shop,operator,trough,emulsion,solidsPercent,meshCountPerCm,threadUm,printPasses,squeegeePasses,eomUm,meshUm,totalUm\nA,B,c,D,38,61,64,2,1,,99,90\n");
        var run = await ShellRun.Of("coat", "predict", "--readings", readings, "--cases", House.Of("demo", "coat-cases.csv"));

        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains("line 2, column 12", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_person_reads_the_answer_before_the_table_of_groups()
    {
        var run = await ShellRun.Of("coat", "predict", "--readings", House.Of("demo", "coat-readings.csv"), "--cases", House.Of("demo", "coat-cases.csv"));

        Assert.Equal(0, run.ExitCode);
        Assert.True(run.Output.IndexOf("nine of ten", StringComparison.Ordinal) < run.Output.IndexOf("lays otherwise", StringComparison.Ordinal));
    }
}
