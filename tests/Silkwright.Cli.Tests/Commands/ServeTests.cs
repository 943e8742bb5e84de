namespace Silkwright.Cli.Tests.Commands;

public sealed class ServeTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task The_web_program_starts_says_where_it_is_and_stops_when_told()
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        var said = new SaidLine();
        var surroundings = new Surroundings { Output = said, Error = TextWriter.Null };
        var serving = Shell.RunAsync(["serve", "--urls", "http://127.0.0.1:0", "--data", folder.Path], surroundings, stop.Token);
        var line = await said.Line.WaitAsync(TimeSpan.FromMinutes(1), TestContext.Current.CancellationToken);
        using var client = new HttpClient { BaseAddress = new Uri(line.Split(' ', ',')[3]) };
        Assert.True((await client.GetAsync(new Uri("/health/ready", UriKind.Relative), TestContext.Current.CancellationToken)).IsSuccessStatusCode);
        await stop.CancelAsync();
        Assert.Equal(0, await serving);
    }

    [Fact]
    public async Task An_address_that_cannot_be_is_a_fault()
    {
        var run = await ShellRun.Of("serve", "--urls", "nowhere", "--data", folder.Path);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("--urls nowhere", run.Error, StringComparison.Ordinal);
    }

    /// <summary>Gives out the first line written to it.</summary>
    private sealed class SaidLine : StringWriter
    {
        private readonly TaskCompletionSource<string> line = new();

        public Task<string> Line => line.Task;

        public override Task WriteLineAsync(string? value)
        {
            line.TrySetResult(value ?? "");
            return Task.CompletedTask;
        }
    }
}
