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

    [Fact]
    public async Task A_screen_nobody_knows_is_a_fault()
    {
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
