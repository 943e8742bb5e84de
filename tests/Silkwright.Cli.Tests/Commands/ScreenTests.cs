using Silkwright.Records.Store;

namespace Silkwright.Cli.Tests.Commands;

public sealed class ScreenTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task A_screen_is_put_on_record_written_to_and_shown()
    {
        await SaveShop();
        var added = await ShellRun.Of("screen", "add", "--frame", "Q-07", "--mesh", "120/cm", "--thread", "34um", "--dyed", "--tension", "23N/cm", "--person", "Ines Tarrow", "--id", "S-0042", "--data", folder.Path);
        Assert.Equal((0, ""), (added.ExitCode, added.Error));
        foreach (var entry in new[] { "degreased", "coated|--emulsion|Wren 47|--strokes|P S", "dry-in|--place|cabinet", "dry-out", "exposed|--seconds|9s|--solid-step|6" })
        {
            var written = await ShellRun.Of(["screen", "event", .. entry.Split('|')[..1], "S-0042", .. entry.Split('|')[1..], "--person", "Bram Oddie", "--data", folder.Path]);
            Assert.Equal((0, ""), (written.ExitCode, written.Error));
        }

        var shown = await ShellRun.Of("screen", "show", "S-0042", "--data", folder.Path, "--json");
        Assert.Equal("silkwright/screen/1", shown.Document["schema"]!.GetValue<string>());
        Assert.Equal(5, shown.Document["entries"]!.AsArray().Count);
        Assert.Equal("exposed", shown.Document["stage"]!.GetValue<string>());
        Assert.Equal(9, shown.Document["exposure"]!["amount"]!.GetValue<double>());
    }

    [Fact]
    public async Task An_entry_without_a_person_is_refused_and_nothing_is_written()
    {
        await SaveShop();
        await ShellRun.Of("screen", "add", "--frame", "Q-07", "--mesh", "120/cm", "--thread", "34um", "--person", "Ines Tarrow", "--id", "S-1", "--data", folder.Path);
        var run = await ShellRun.Of("screen", "event", "printed", "S-1", "--impressions", "-4", "--data", folder.Path);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("--person", run.Error, StringComparison.Ordinal);
        Assert.Contains("--impressions", run.Error, StringComparison.Ordinal);
        var shown = await ShellRun.Of("screen", "show", "S-1", "--data", folder.Path, "--json");
        Assert.Empty(shown.Document["entries"]!.AsArray());
    }

    [Theory]
    [InlineData("11/12")]
    [InlineData("2026-11-25")]
    [InlineData("25 Nov 2026 08:25")]
    [InlineData("08:25")]
    [InlineData("2026-13-25T08:25")]
    public async Task A_time_that_another_country_reads_otherwise_is_no_time(string at)
    {
        await SaveShop();
        await ShellRun.Of("screen", "add", "--frame", "Q-07", "--mesh", "120/cm", "--thread", "34um", "--person", "Ines Tarrow", "--id", "S-1", "--data", folder.Path);
        var run = await ShellRun.Of("screen", "event", "degreased", "S-1", "--at", at, "--person", "Ines Tarrow", "--data", folder.Path);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("--at", run.Error, StringComparison.Ordinal);
        Assert.Contains("2026-11-25T08:25", run.Error, StringComparison.Ordinal);
    }

    /// <summary>The forms of ISO 8601-1: with seconds, with Z, with a zone's offset.</summary>
    [Theory]
    [InlineData("2025-11-25T08:25Z", "2025-11-25T08:25:00")]
    [InlineData("2025-11-25T08:25:30+02:00", "2025-11-25T06:25:30")]
    public async Task A_time_with_its_zone_is_kept_as_that_instant(string at, string utc)
    {
        await SaveShop();
        await ShellRun.Of("screen", "add", "--frame", "Q-07", "--mesh", "120/cm", "--thread", "34um", "--person", "Ines Tarrow", "--id", "S-1", "--data", folder.Path);
        var run = await ShellRun.Of("screen", "event", "degreased", "S-1", "--at", at, "--person", "Ines Tarrow", "--data", folder.Path, "--json");
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Contains(utc, run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_screen_nobody_knows_is_a_fault()
    {
        await SaveShop();
        var run = await ShellRun.Of("screen", "show", "S-9999", "--data", folder.Path);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("S-9999", run.Error, StringComparison.Ordinal);
    }

    private async Task SaveShop()
    {
        var store = await SilkwrightStore.OpenAsync(DataFolder.Open(folder.Path), TimeProvider.System, TestContext.Current.CancellationToken);
        await store.Shops.SaveAsync("shop", """{"name": "A shop (invented)"}""", "Ines Tarrow", "first", cancel: TestContext.Current.CancellationToken);
    }
}
