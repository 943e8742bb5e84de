using System.Diagnostics;
using System.Text.Json.Nodes;
using Silkwright.Cli.Tests.Schema;

namespace Silkwright.Cli.Tests.Commands;

/// <summary><c>silkwright light slab</c>, <c>edge</c> and <c>surface</c> in the shell.</summary>
public sealed class LightTests
{
    private const string Layers =
        """
        n,muaPerCm,musPerCm,g,thicknessUm
        1,,,,
        1.37,1,100,0.9,1000
        1.37,1,10,0,1000
        1.37,2,10,0.7,2000
        1,,,,
        """;

    /// <summary>Wang, Jacques and Zheng 1995 give 0.2375 for the diffuse part of these three layers, from memory.</summary>
    [Fact]
    public async Task A_table_of_layers_is_followed_through()
    {
        using var folder = new TemporaryFolder();
        var path = Path.Combine(folder.Path, "layers.csv");
        await File.WriteAllTextAsync(path, Layers, TestContext.Current.CancellationToken);
        var run = await ShellRun.Of("light", "slab", "--layers", path, "--photons", "200000", "--json");
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Equal(0.2375, run.Document["diffuseReflectance"]!.GetValue<double>(), 4e-3);
        Assert.Equal(3, run.Document["absorbedByLayer"]!.AsArray().Count);
    }

    [Theory]
    [InlineData("n,muaPerCm,musPerCm,g\n1,,,\n1,1,1,0\n1,,,\n", "thicknessUm")]
    [InlineData("n,muaPerCm,musPerCm,g,thicknessUm\n1,,,,\n1.4,x,1,0,10\n1,,,,\n", "line 3, column 2")]
    [InlineData("n,muaPerCm,musPerCm,g,thicknessUm\n1,,,,\n", "rows below its header")]
    public async Task A_table_with_a_fault_is_told_with_its_place(string text, string told)
    {
        using var folder = new TemporaryFolder();
        var path = Path.Combine(folder.Path, "layers.csv");
        await File.WriteAllTextAsync(path, text, TestContext.Current.CancellationToken);
        var run = await ShellRun.Of("light", "slab", "--layers", path);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(told, run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--mua 10/cm --mus 90/cm", "--thickness")]
    [InlineData("--mua 10/cm --mus 90/cm --thickness 200um --g 1", "--g")]
    [InlineData("--mua 10/cm --mus 90/cm --thickness 200um --photons 0.5", "--photons")]
    [InlineData("--mua 10/cm --mus 90/cm --thickness 200um --threads 0", "--threads")]
    [InlineData("--mua -1/cm --mus 90/cm --thickness 200um", "--mua")]
    public async Task What_cannot_be_is_told(string line, string where)
    {
        var run = await ShellRun.Of(["light", "slab", .. line.Split(' ')]);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains($"where:  {where}", run.Error, StringComparison.Ordinal);
    }

    private const string Case =
        """
        { "mesh": { "countPerCm": 120, "threadUm": 34, "dyed": true }, "emulsion": { "family": "photopolymer", "printSideUm": 8 }, "lamp": { "kind": "tubes" },
          "filmBaseUm": 100, "imageAgainstCoat": false, "gapUm": 5, "backing": { "reflectance": 0.2 }, "photons": 20000, "seed": 4 }
        """;

    [Fact]
    public async Task A_case_in_a_file_is_answered_as_the_same_case_typed()
    {
        using var folder = new TemporaryFolder();
        var path = Path.Combine(folder.Path, "case.json");
        await File.WriteAllTextAsync(path, Case, TestContext.Current.CancellationToken);
        var file = (await ShellRun.Of("light", "edge", path, "--json")).Document;
        var typed = (await ShellRun.Of(
            [.. "light edge --count 120/cm --thread 34um --mesh-colour dyed --family photopolymer --eom 8um --lamp tubes --film-between 100um --gap 5um --backing 20% --photons 20000 --seed 4 --json".Split(' ')])).Document;
        file.Remove("photonsPerSecond");
        typed.Remove("photonsPerSecond");
        Assert.Equal(typed.ToJsonString(), file.ToJsonString());
    }

    [Theory]
    [InlineData("--thread 34um", "--count")]
    [InlineData("--count 120/cm --thread 34um --lamp moon", "--lamp")]
    [InlineData("--count 120/cm --thread 34um --width 80um", "--width")]
    [InlineData("--count 120/cm --thread 34um --image line", "--width")]
    [InlineData("--count 120/cm --thread 34um --lamp-source 80mm", "--lamp-distance")]
    [InlineData("--count 120/cm --thread 34um --lamp tubes --slant 60deg", "--slant")]
    [InlineData("--count 120/cm --thread 34um --photons 10", "--photons")]
    [InlineData("--count 120/cm --thread 34um --threads 0", "--threads")]
    public async Task An_edge_that_cannot_be_is_told(string line, string where)
    {
        var run = await ShellRun.Of(["light", "edge", .. line.Split(' ')]);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains($"where:  {where}", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{ "mesh": { "countPerCm": 120 } }""", "mesh.threadUm")]
    [InlineData("""{ "mesh": { "countPerCm": 120, "threadUm": 100 } }""", "overlap")]
    [InlineData("""{ "mesh": { "countPerCm": 120, "threadUm": 34 }, "imageAgainstCoat": false }""", "filmBaseUm")]
    [InlineData("""{ "mesh": { "countPerCm": 120, "threadUm": 34 }, "lamp": { "kind": "point", "sourceMm": 40 } }""", "lamp.sourceMm")]
    [InlineData("""{ "mesh": { "countPerCm": 120, "threadUm": 34 }, "image": { "kind": "gap" } }""", "image.widthUm")]
    [InlineData("""{ "mesh": { "countPerCm": 120, "threadUm": 34 }, "emulsion": { "g": 1 }, "backing": { "reflectance": 3 } }""", "backing.reflectance")]
    public async Task A_case_with_a_fault_is_told_with_its_place(string text, string told)
    {
        using var folder = new TemporaryFolder();
        var path = Path.Combine(folder.Path, "case.json");
        await File.WriteAllTextAsync(path, text, TestContext.Current.CancellationToken);
        var run = await ShellRun.Of("light", "edge", path);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(told, run.Error, StringComparison.Ordinal);
    }

    /// <summary>A rough surface, twice: the same bytes, and a file by its schema.</summary>
    [Fact]
    public async Task A_fitted_light_is_built_the_same_again()
    {
        using var folder = new TemporaryFolder();
        string[] paths = [Path.Combine(folder.Path, "one.json"), Path.Combine(folder.Path, "two.json")];
        foreach (var path in paths)
        {
            var run = await ShellRun.Of("light", "surface", "--places", "60", "--photons", "1000", "--seed", "3", "--out", path);
            Assert.Equal(0, run.ExitCode);
            Assert.Contains("60 places, 1000 photons each, seed 3", run.Output, StringComparison.Ordinal);
        }

        var text = await File.ReadAllTextAsync(paths[0], TestContext.Current.CancellationToken);
        Assert.Equal(text, await File.ReadAllTextAsync(paths[1], TestContext.Current.CancellationToken));
        Assert.Empty(SchemaCheck.Faults("light-surface.json", JsonNode.Parse(text)!.AsObject()));
    }

    /// <summary>Told before any photon is followed: the usual surface would take a quarter of an hour.</summary>
    [Fact]
    public async Task A_file_that_cannot_be_written_is_told_before_the_work()
    {
        using var folder = new TemporaryFolder();
        var watch = Stopwatch.StartNew();
        foreach (var path in new[] { folder.Path, Path.Combine(folder.Path, "no", "such.json") })
        {
            var run = await ShellRun.Of("light", "surface", "--out", path);
            Assert.Equal((2, ""), (run.ExitCode, run.Output));
            Assert.Contains("can't be written", run.Error, StringComparison.Ordinal);
        }

        Assert.InRange(watch.Elapsed, TimeSpan.Zero, TimeSpan.FromMinutes(1));
        Assert.Empty(Directory.EnumerateFileSystemEntries(folder.Path));
    }

    [Theory]
    [InlineData("--places 5", "--places")]
    [InlineData("--photons 10", "--photons")]
    public async Task A_surface_that_cannot_be_is_told_and_nothing_is_written(string line, string where)
    {
        using var folder = new TemporaryFolder();
        var run = await ShellRun.Of(["light", "surface", .. line.Split(' '), "--out", Path.Combine(folder.Path, "rough.json")]);
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains($"where:  {where}", run.Error, StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFileSystemEntries(folder.Path));
    }
}
