namespace Silkwright.Cli.Tests.Commands;

/// <summary>A data folder whose name was mistyped is told, and never made in silence.</summary>
public sealed class DataFolderTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    public static TheoryData<string> Readers =>
    [
        "plan job.json",
        "choose --ink plastisol --run 300",
        "shelf",
        "expose drift",
        "screen show S-0001",
        "screen add --frame Q-07 --mesh 120/cm --thread 34um --person Ines",
        "screen event degreased S-0001 --person Ines",
        "catalogue show",
        "gauge chart",
        "gauge read gauge.csv --by Ines",
        "gauge withdraw 1 --by Ines --why odd",
        "coat experience",
        "coat keep experience.json --by Ines",
        "coat withdraw 1 --by Ines --why odd",
    ];

    [Theory]
    [MemberData(nameof(Readers))]
    public async Task A_verb_that_reads_refuses_a_folder_that_is_not_there(string line)
    {
        var mistyped = Path.Combine(folder.Path, "dtaa");
        Refused(await RunAsync(line, mistyped), mistyped);
        Assert.False(Path.Exists(mistyped));
    }

    [Theory]
    [InlineData("choose --ink plastisol --run 300")]
    [InlineData("screen show S-0001")]
    public async Task A_folder_of_something_else_is_refused_and_left_as_it_is(string line)
    {
        var other = Directory.CreateDirectory(Path.Combine(folder.Path, "letters")).FullName;
        Refused(await RunAsync(line, other), other);
        Assert.Empty(Directory.EnumerateFileSystemEntries(other));
    }

    [Theory]
    [InlineData("catalogue keep catalogue.csv --by Ines")]
    [InlineData("demo --from demo")]
    public async Task A_verb_that_begins_a_shops_records_makes_the_folder_and_says_so_once(string line)
    {
        var data = Path.Combine(folder.Path, "data");
        var first = await RunAsync(line, data);
        Assert.Equal(0, first.ExitCode);
        Assert.Contains($"New records are begun in {data}", first.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("New records", (await RunAsync(line, data)).Error, StringComparison.Ordinal);
    }

    private static void Refused(ShellRun run, string path)
    {
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains($"where:  {path}", run.Error, StringComparison.Ordinal);
        Assert.Contains("silkwright serve --data", run.Error, StringComparison.Ordinal);
    }

    private Task<ShellRun> RunAsync(string line, string data)
    {
        folder.Write("job.json", """{"run": 100, "colours": [{"ink": "plastisol", "kind": "leftChestSpot"}]}""");
        var files = new Dictionary<string, string>
        {
            ["job.json"] = Path.Combine(folder.Path, "job.json"),
            ["gauge.csv"] = House.Of("demo", "gauge-history.csv"),
            ["catalogue.csv"] = House.Of("demo", "catalogue.csv"),
            ["experience.json"] = folder.Write("experience.json", "{}"),
            ["demo"] = SmallDemo(),
        };
        var words = line.Split(' ');
        return ShellRun.Of([words[0], .. words[1..].Select(word => files.GetValueOrDefault(word, word)), "--data", data]);
    }

    /// <summary>The demonstration without its drawings, whose films take a minute.</summary>
    private string SmallDemo()
    {
        var demo = Directory.CreateDirectory(Path.Combine(folder.Path, "demo")).FullName;
        _ = Directory.CreateDirectory(Path.Combine(demo, "artwork"));
        _ = Directory.CreateDirectory(Path.Combine(demo, "jobs"));
        foreach (var file in (string[])["shop.json", "screens.json"])
            File.Copy(House.Of("demo", file), Path.Combine(demo, file), overwrite: true);
        return demo;
    }
}
