using System.Text.Json.Nodes;
using System.Xml.Linq;

namespace Silkwright.Cli.Tests.Commands;

public sealed class MoireTests
{
    private const string Line = "mesh moire --count 90/cm --thread 48um --ruling 25/cm --angle 0deg";

    /// <summary>4 x 25 against 90 threads a centimetre: ten waves a centimetre, 1 mm (Amidror's |k f₁ − m f₂|, worked by hand).</summary>
    [Fact]
    public async Task The_fourth_of_25_lines_beats_with_90_threads_at_a_millimetre()
    {
        var document = (await ShellRun.Of([.. Line.Split(' '), "--json"])).Document;
        var patterns = document["patterns"]!.AsArray();
        var beat = patterns.Single(pattern => Orders(pattern!, "ruling") is [4, 0] && Orders(pattern!, "thread") is [1, 0]);
        Assert.Equal(1.0, beat!["periodMm"]!.GetValue<double>(), 1e-9);
        Assert.Equal(patterns.Max(pattern => pattern!["visibility"]!.GetValue<double>()), patterns[0]!["visibility"]!.GetValue<double>());
        Assert.NotEmpty(document["bestAngles"]!.AsArray());

        static int[]? Orders(JsonNode pattern, string of) =>
            pattern["orders"]![of] is JsonArray pair ? [.. pair.Select(order => order!.GetValue<int>())] : null;
    }

    [Fact]
    public async Task The_picture_is_written_as_its_name_says_and_to_scale()
    {
        using var folder = new TemporaryFolder();
        var (png, svg) = (Path.Combine(folder.Path, "beat.png"), Path.Combine(folder.Path, "beat.svg"));
        Assert.Equal(0, (await ShellRun.Of([.. Line.Split(' '), "--picture", png])).ExitCode);
        Assert.Equal(0, (await ShellRun.Of([.. Line.Split(' '), "--picture", svg])).ExitCode);
        Assert.Equal([0x89, 0x50, 0x4E, 0x47], (await File.ReadAllBytesAsync(png, TestContext.Current.CancellationToken))[..4]);
        var drawing = XDocument.Parse(await File.ReadAllTextAsync(svg, TestContext.Current.CancellationToken)).Root!;
        Assert.Equal("20mm", drawing.Attribute("width")!.Value);
        Assert.StartsWith("0 0 20 ", drawing.Attribute("viewBox")!.Value, StringComparison.Ordinal);
        // the measure under the picture is the plainest beat's period, 3 x 25 against 90: 10/15 mm
        Assert.Contains("h0.6667v", drawing.Elements().Single(e => e.Name.LocalName == "path").Attribute("d")!.Value, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("beat.jpg", ".png or .svg")]
    [InlineData("no-such-folder/beat.png", "can't be written")]
    public async Task A_picture_that_cannot_be_written_ends_with_2(string name, string says)
    {
        using var folder = new TemporaryFolder();
        var run = await ShellRun.Of([.. Line.Split(' '), "--picture", Path.Combine(folder.Path, name)]);
        Assert.Equal(2, run.ExitCode);
        Assert.Empty(run.Output);
        Assert.Contains(says, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Half_a_knit_and_a_mesh_that_is_none_are_told_at_once()
    {
        var run = await ShellRun.Of([.. Line.Split(' '), "--knit-wales", "14/cm", "--on-hand", "61/64,wide"]);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("--knit-courses", run.Error, StringComparison.Ordinal);
        Assert.Contains("'wide' is not a mesh", run.Error, StringComparison.Ordinal);
    }
}
