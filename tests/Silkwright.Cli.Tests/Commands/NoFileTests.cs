using System.Diagnostics;
using Silkwright.Records.Store;

namespace Silkwright.Cli.Tests.Commands;

/// <summary>What has a file's name but is none, or never ends, is refused at every door; nobody waits for it.</summary>
public sealed class NoFileTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public static TheoryData<string> Doors => ["plan {0}", "plan {1} --shop {0}", "film {0}", "film {0} --dpi 1200"];

    public void Dispose() => folder.Dispose();

    [Theory]
    [MemberData(nameof(Doors))]
    public async Task A_device_is_refused(string door)
    {
        Assert.SkipUnless(File.Exists("/dev/zero"), "this system has no /dev/zero");
        Told(await RunAsync(door, "/dev/zero"), "device");
    }

    [Theory]
    [MemberData(nameof(Doors))]
    public async Task A_link_to_a_device_is_refused(string door)
    {
        Assert.SkipUnless(File.Exists("/dev/zero"), "this system has no /dev/zero");
        var link = Path.Combine(folder.Path, "link.tif");
        File.CreateSymbolicLink(link, "/dev/zero");
        Told(await RunAsync(door, link), "device");
    }

    [Theory]
    [MemberData(nameof(Doors))]
    public async Task A_pipe_nobody_writes_to_is_refused(string door)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows keeps no pipes among its files");
        var pipe = Path.Combine(folder.Path, "pipe.tif");
        using (var make = Process.Start("mkfifo", pipe))
            await make.WaitForExitAsync(TestContext.Current.CancellationToken);
        Told(await RunAsync(door, pipe), "pipe");
    }

    [Theory]
    [MemberData(nameof(Doors))]
    public async Task A_folder_is_refused(string door) => Told(await RunAsync(door, folder.Path), "folder");

    [Theory]
    [MemberData(nameof(Doors))]
    public async Task An_empty_file_is_refused(string door) => Told(await RunAsync(door, folder.Write("empty.tif", "")), "empty");

    [Fact]
    public async Task A_film_of_a_job_that_is_a_device_is_refused_and_not_kept()
    {
        Assert.SkipUnless(File.Exists("/dev/zero"), "this system has no /dev/zero");
        var data = await BegunAsync();
        var job = folder.Write("job.json", """{"run": 100, "colours": [{"ink": "plastisol", "film": "/dev/zero"}]}""");
        Told(await ShellRun.Of("plan", job), "device");
        Told(await ShellRun.Of("plan", job, "--data", data), "device");
    }

    [Fact]
    public async Task A_film_that_is_none_is_not_kept_in_the_data_folder()
    {
        var data = await BegunAsync();
        folder.Write("notes.tif", "Not a film at all.");
        var job = folder.Write("job.json", """{"run": 100, "colours": [{"ink": "plastisol", "film": "notes.tif"}]}""");
        Told(await ShellRun.Of("plan", job, "--data", data), "neither a TIFF nor a PNG");
        Assert.Empty(Directory.GetFiles(Path.Combine(data, "films")));
    }

    private async Task<string> BegunAsync() =>
        (await SilkwrightStore.OpenAsync(DataFolder.Open(Path.Combine(folder.Path, "data")), TimeProvider.System, TestContext.Current.CancellationToken)).Folder.Path;

    [Fact]
    public async Task A_document_longer_than_any_job_is_refused() =>
        Told(await ShellRun.Of("plan", folder.Write("job.json", new byte[(16 << 20) + 1])), "too large");

    [Fact]
    public async Task A_film_named_as_a_job_is_told_to_be_no_text() =>
        Told(await ShellRun.Of("plan", folder.Write("film.tif", [0x49, 0x49, 0x2A, 0x00, 0xFF, 0xFE, 0xC3, 0x28])), "not text");

    private async Task<ShellRun> RunAsync(string door, string path)
    {
        var job = folder.Write("job.json", """{"run": 100, "colours": [{"ink": "plastisol"}]}""");
        return await ShellRun.Of([.. door.Split(' ').Select(word => word.Replace("{0}", path, StringComparison.Ordinal).Replace("{1}", job, StringComparison.Ordinal))]);
    }

    private static void Told(ShellRun run, string what)
    {
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains(what, run.Error, StringComparison.Ordinal);
        Assert.Contains("where:", run.Error, StringComparison.Ordinal);
        Assert.Contains("remedy:", run.Error, StringComparison.Ordinal);
    }
}
