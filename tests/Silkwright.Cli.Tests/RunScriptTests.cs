using System.Diagnostics;

namespace Silkwright.Cli.Tests;

/// <summary>The script <c>run</c>, with a builder in place of the SDK's that tells when two of it work at once.</summary>
public sealed class RunScriptTests : IDisposable
{
    private const string Builder = """
        #!/usr/bin/env bash
        while [ $# -gt 0 ]; do [ "$1" = -o ] && out="$2"; shift; done
        mkdir "$out/building" || { echo "two builds at once"; exit 1; }
        echo build >> "$HOUSE/builds"
        sleep 1
        printf '#!/usr/bin/env bash\necho "ran $*"\n' > "$out/silkwright"
        chmod +x "$out/silkwright"
        rmdir "$out/building"
        """;

    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task Two_first_runs_at_once_build_once_and_both_run()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("the script is one of bash");
            return;
        }

        File.Copy(House.Of("run"), Path.Combine(folder.Path, "run"));
        _ = Directory.CreateDirectory(Path.Combine(folder.Path, "src"));
        _ = Directory.CreateDirectory(Path.Combine(folder.Path, "bin"));
        folder.Write("Directory.Build.props", "");
        folder.Write("global.json", "");
        var dotnet = folder.Write(Path.Combine("bin", "dotnet"), Builder.ReplaceLineEndings("\n"));
        File.SetUnixFileMode(dotnet, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);

        var runs = await Task.WhenAll(RunAsync("one"), RunAsync("two"), RunAsync("three"));

        Assert.All(runs, run => Assert.Equal(0, run.ExitCode));
        Assert.Equal(["ran one", "ran two", "ran three"], runs.Select(run => run.Output.Trim()));
        Assert.Single(await File.ReadAllLinesAsync(Path.Combine(folder.Path, "builds"), Cancel));
    }

    private async Task<(int ExitCode, string Output)> RunAsync(string verb)
    {
        var start = new ProcessStartInfo("bash", [Path.Combine(folder.Path, "run"), verb]) { RedirectStandardOutput = true };
        start.Environment["PATH"] = $"{Path.Combine(folder.Path, "bin")}:{Environment.GetEnvironmentVariable("PATH")}";
        start.Environment["HOUSE"] = folder.Path;
        using var script = Process.Start(start)!;
        var output = await script.StandardOutput.ReadToEndAsync(Cancel);
        await script.WaitForExitAsync(Cancel);
        return (script.ExitCode, output);
    }
}
