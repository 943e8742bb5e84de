using System.Collections.Concurrent;
using System.Diagnostics;
using System.Net;
using System.Net.Http.Json;
using System.Net.Sockets;
using System.Security.Cryptography;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Silkwright.Film.TestFilms;
using Silkwright.Records.Store;

namespace Silkwright.Cli.Tests.Commands;

/// <summary>The web program in a process of its own, killed without warning while people write and films arrive.</summary>
public sealed partial class KilledServerTests : IDisposable
{
    private const int Writers = 4;

    /// <summary>Screens more that are answered before each kill.</summary>
    private static readonly int[] KilledAfter = [5, 12, 31];

    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    private readonly TemporaryFolder folder = new();
    private readonly ConcurrentDictionary<string, string> screens = new();
    private readonly ConcurrentDictionary<string, string> jobs = new();

    private string Data => Path.Combine(folder.Path, "data");

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task Everything_answered_as_written_is_there_after_the_next_start_and_no_film_is_half()
    {
        foreach (var (after, round) in KilledAfter.Select((after, round) => (after, round)))
            await WriteUntilKilledAsync(after, round);

        Assert.True(screens.Count >= KilledAfter.Sum(), $"only {screens.Count} screens were answered before the program was killed");
        var store = await SilkwrightStore.OpenAsync(DataFolder.Open(Data), TimeProvider.System, Cancel);
        foreach (var (id, frame) in screens)
        {
            var record = await store.Screens.ShowAsync(id, Cancel);
            Assert.Equal(frame, record.Screen.Frame);
            _ = Assert.Single(record.Events);
        }

        foreach (var (id, hash) in jobs)
            Assert.Contains(hash, (await store.Jobs.FilmHashesAsync(id, Cancel)).Values);
        var films = await store.Films.ListAsync(Cancel);
        Assert.All(films, film => Assert.True(File.Exists(store.Films.PathOf(film)), $"{film.FileName} has a row and no file"));
        foreach (var path in Directory.GetFiles(Path.Combine(Data, "films")).Where(p => !p.EndsWith(".incoming", StringComparison.Ordinal)))
            Assert.Equal(Path.GetFileNameWithoutExtension(path), Convert.ToHexStringLower(SHA256.HashData(await File.ReadAllBytesAsync(path, Cancel))));
    }

    private async Task WriteUntilKilledAsync(int after, int round)
    {
        var address = $"http://127.0.0.1:{FreePort()}";
        using var program = Start(address);
        try
        {
            using var client = new HttpClient(new HttpClientHandler { CookieContainer = new CookieContainer() }) { BaseAddress = new Uri(address) };
            await UntilReadyAsync(client, program);
            var token = Token().Match(await client.GetStringAsync("/jobs/new", Cancel)).Groups[1].Value;
            var writing = Enumerable.Range(0, Writers).Select(n => UntilGoneAsync(i => ScreenAsync(client, $"{round}-{n}-{i}")))
                .Append(UntilGoneAsync(i => FilmAsync(client, token, $"{round}-{i}"))).ToList();
            var target = screens.Count + after;
            for (var waited = Stopwatch.StartNew(); screens.Count < target && waited.Elapsed < TimeSpan.FromMinutes(2);)
                await Task.Delay(5, Cancel);
            program.Kill();
            await Task.WhenAll(writing);
        }
        finally
        {
            if (!program.HasExited)
                program.Kill();
            await program.WaitForExitAsync(CancellationToken.None);
        }
    }

    private static async Task UntilGoneAsync(Func<int, Task> write)
    {
        try
        {
            for (var i = 0; ; i++)
                await write(i);
        }
        catch (Exception gone) when (gone is HttpRequestException or IOException)
        {
            // the program was killed: what it had not answered may or may not be there
        }
    }

    private async Task ScreenAsync(HttpClient client, string frame)
    {
        var added = await client.PostAsJsonAsync("/api/screens", new { frame, mesh = new { countPerCm = 61, threadUm = 64 }, person = "Ada" }, Cancel);
        Assert.Equal(HttpStatusCode.OK, added.StatusCode);
        var id = (string)JsonNode.Parse(await added.Content.ReadAsStringAsync(Cancel))!["id"]!;
        var written = await client.PostAsJsonAsync($"/api/screens/{id}/entries", new { fact = new { kind = "degreased" }, person = "Ada" }, Cancel);
        Assert.Equal(HttpStatusCode.OK, written.StatusCode);
        screens[id] = frame;
    }

    private async Task FilmAsync(HttpClient client, string token, string name)
    {
        var path = Path.Combine(folder.Path, $"{name}.tif");
        FilmMaker.Draw(new FilmRecipe(name, 60, 40, 1200, [new FilmShape { Outline = $"M5 5H{20 + (name.GetHashCode(StringComparison.Ordinal) % 10)}V30H5Z" }]), path, null, Cancel);
        var film = await File.ReadAllBytesAsync(path, Cancel);
        using var form = new MultipartFormDataContent { { new ByteArrayContent(film), "films", $"{name}.tif" } };
        foreach (var (field, value) in new[] { ("__RequestVerificationToken", token), ("_handler", "new-job"), ("name", $"Job {name}"), ("run", "100"), ("ink", "plastisol"), ("by", "Ada") })
            form.Add(new StringContent(value), field);
        var answer = await client.PostAsync("/jobs/new", form, Cancel);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        jobs[answer.RequestMessage!.RequestUri!.Segments[^1]] = Convert.ToHexStringLower(SHA256.HashData(film));
    }

    private Process Start(string address)
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var word in (string[])[typeof(Shell).Assembly.Location, "serve", "--urls", address, "--data", Data])
            start.ArgumentList.Add(word);
        var program = Process.Start(start)!;
        // Drained, so that a full pipe never stops the program.
        program.OutputDataReceived += (_, _) => { };
        program.ErrorDataReceived += (_, _) => { };
        program.BeginOutputReadLine();
        program.BeginErrorReadLine();
        return program;
    }

    private static async Task UntilReadyAsync(HttpClient client, Process program)
    {
        for (var waited = Stopwatch.StartNew(); waited.Elapsed < TimeSpan.FromMinutes(2);)
        {
            Assert.False(program.HasExited, "the program ended before it was ready");
            try
            {
                if ((await client.GetAsync("/health/ready", Cancel)).IsSuccessStatusCode)
                    return;
            }
            catch (HttpRequestException)
            {
                // not listening yet
            }

            await Task.Delay(50, Cancel);
        }

        Assert.Fail("the program was not ready within two minutes");
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    [GeneratedRegex("name=\"__RequestVerificationToken\" value=\"([^\"]+)\"")]
    private static partial Regex Token();
}
