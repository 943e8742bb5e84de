using System.Diagnostics;

namespace Silkwright.Cli.Tests;

/// <summary>Answers that cannot be written out: a full disk is told, a reader that went away is left in peace.</summary>
public sealed class FullDiskTests
{
    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("mesh --count 61/cm --thread 64um")]
    [InlineData("mesh --count 61/cm --thread 64um --json")]
    [InlineData("mesh --help")]
    [InlineData("--version")]
    public async Task An_answer_that_finds_no_room_is_told_with_what_to_do(string line)
    {
        Assert.SkipUnless(File.Exists("/dev/full"), "this system has no /dev/full");
        var (exitCode, error) = await InShellAsync($"{line} > /dev/full");
        Assert.Equal(2, exitCode);
        Assert.Contains("could not be written", error, StringComparison.Ordinal);
        Assert.Contains("where:  standard output", error, StringComparison.Ordinal);
        Assert.Contains("remedy:", error, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_reader_that_has_seen_enough_ends_it_quietly()
    {
        Assert.SkipUnless(File.Exists("/bin/sh"), "this system has no shell of POSIX");
        var (_, error) = await InShellAsync("shelf --help | head -1 > /dev/null");
        Assert.Empty(error);
    }

    [Fact]
    public async Task Messages_that_find_no_room_leave_the_exit_code_as_it_is()
    {
        Assert.SkipUnless(File.Exists("/dev/full"), "this system has no /dev/full");
        Assert.Equal(2, (await InShellAsync("mesh --count 64 2> /dev/full")).ExitCode);
    }

    private static async Task<(int ExitCode, string Error)> InShellAsync(string line)
    {
        using var program = Process.Start(new ProcessStartInfo("/bin/sh", ["-c", $"dotnet \"{typeof(Shell).Assembly.Location}\" {line}"])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        var (output, error) = (program.StandardOutput.ReadToEndAsync(Cancel), program.StandardError.ReadToEndAsync(Cancel));
        await program.WaitForExitAsync(Cancel);
        _ = await output;
        return (program.ExitCode, await error);
    }
}
