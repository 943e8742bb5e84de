using System.Xml.Linq;

namespace Silkwright.Cli.Tests.Commands;

public sealed class FilmPictureTests
{
    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    /// <summary>8 x 8 px at 254 dpi: 100 µm a pixel, 0.8 mm a side; a bar of two pixels, 200 µm, is narrower than mesh 32/100 prints whole, 312.5 µm (3 threads or a pitch).</summary>
    [Fact]
    public async Task A_film_is_drawn_against_a_mesh_to_scale()
    {
        using var folder = new TemporaryFolder();
        var film = folder.Write("bar.tif", Bar());
        var (png, svg) = (Path.Combine(folder.Path, "bar.png"), Path.Combine(folder.Path, "bar.svg"));
        string[] mesh = ["--mesh", "32/cm,100um"];
        Assert.Equal(0, (await ShellRun.Of(["film", film, "--picture", png, .. mesh])).ExitCode);
        Assert.Equal(0, (await ShellRun.Of(["film", film, "--picture", svg, .. mesh])).ExitCode);
        Assert.Equal([0x89, 0x50, 0x4E, 0x47], (await File.ReadAllBytesAsync(png, Cancel))[..4]);
        var drawing = XDocument.Parse(await File.ReadAllTextAsync(svg, Cancel)).Root!;
        Assert.Equal("0.8mm", drawing.Attribute("width")!.Value);
        Assert.Contains("100 % of what prints is narrower", drawing.Value, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("one.tif --picture a.png", "--mesh is missing")]
    [InlineData("one.tif --picture a.gif --mesh 61/cm,64um", ".png or .svg")]
    [InlineData("one.tif two.tif --picture a.png --mesh 61/cm,64um", "several are named")]
    public async Task A_picture_that_cannot_be_drawn_ends_with_2_before_any_film_is_measured(string line, string says)
    {
        var run = await ShellRun.Of(["film", .. line.Split(' ')]);
        Assert.Equal(2, run.ExitCode);
        Assert.Empty(run.Output);
        Assert.Contains(says, run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("no-folder/a.png", "Name a folder that is there")]
    [InlineData("folder.png", "it is a folder")]
    [InlineData("film.png", "is the file that is read")]
    public async Task A_place_where_no_picture_can_be_written_is_told_before_any_film_is_measured(string name, string says)
    {
        using var folder = new TemporaryFolder();
        var film = folder.Write("film.png", Bar());
        _ = Directory.CreateDirectory(Path.Combine(folder.Path, "folder.png"));
        var run = await ShellRun.Of("film", film, "--picture", Path.Combine(folder.Path, name), "--mesh", "61/cm,64um");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(says, run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("measuring", run.Error, StringComparison.Ordinal);
        Assert.Equal(Bar(), await File.ReadAllBytesAsync(film, Cancel));
    }

    [Fact]
    public async Task A_picture_that_finds_no_room_is_told_with_what_to_do()
    {
        Assert.SkipUnless(File.Exists("/dev/full"), "this system has no /dev/full");
        using var folder = new TemporaryFolder();
        var full = Path.Combine(folder.Path, "full.png");
        _ = File.CreateSymbolicLink(full, "/dev/full");
        var run = await ShellRun.Of("film", folder.Write("film.tif", Bar()), "--picture", full, "--mesh", "61/cm,64um");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("Make room", run.Error, StringComparison.Ordinal);
        Assert.True(File.Exists("/dev/full"));
    }

    /// <summary>The smallest TIFF there is for it: one strip of eight rows, uncompressed, black is 1; rows 00011000.</summary>
    private static byte[] Bar()
    {
        using var bytes = new MemoryStream();
        using var write = new BinaryWriter(bytes);
        write.Write("II*\0"u8);
        write.Write(32);
        write.Write(Enumerable.Repeat((byte)0b00011000, 8).ToArray());
        write.Write(254);
        write.Write(1);
        write.Write(0L);
        (ushort Tag, ushort Type, int Value)[] entries =
        [
            (256, 3, 8), (257, 3, 8), (258, 3, 1), (259, 3, 1), (262, 3, 0), (273, 4, 8), (277, 3, 1), (278, 3, 8), (279, 4, 8), (282, 5, 16), (283, 5, 16), (296, 3, 2),
        ];
        write.Write((ushort)entries.Length);
        foreach (var (tag, type, value) in entries)
        {
            write.Write(tag);
            write.Write(type);
            write.Write(1);
            write.Write(value);
        }

        write.Write(0);
        return bytes.ToArray();
    }
}
