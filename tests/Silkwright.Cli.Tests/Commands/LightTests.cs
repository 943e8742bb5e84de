namespace Silkwright.Cli.Tests.Commands;

/// <summary><c>silkwright light slab</c> in the shell.</summary>
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
}
