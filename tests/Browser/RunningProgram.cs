using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using Microsoft.Playwright;

namespace Silkwright.Browser.Tests;

/// <summary>The real program in its own process on a free port over a fresh folder, and a real browser.</summary>
public sealed class RunningProgram : IAsyncLifetime
{
    private static readonly string[] BrowserPaths =
    [
        "/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome",
        @"C:\Program Files\Google\Chrome\Application\chrome.exe", @"C:\Program Files (x86)\Microsoft\Edge\Application\msedge.exe",
    ];

    private static readonly string[] BrowserFlags =
        ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];

    private readonly string folder = Path.Combine(Path.GetTempPath(), $"silkwright-browser-{Guid.NewGuid():N}");
    private Process? program;
    private IPlaywright? playwright;
    private IBrowser? browser;

    public string Address { get; private set; } = "";

    public string FilmsFolder => Path.Combine(folder, "data", "films");

    /// <summary>A folder for the test's own files.</summary>
    public string Workbench => Directory.CreateDirectory(Path.Combine(folder, "bench")).FullName;

    public async ValueTask InitializeAsync()
    {
        var executable = BrowserPaths.FirstOrDefault(File.Exists)
            ?? throw new InvalidOperationException("These tests need a Chromium. Install it (on Debian: apt-get install chromium; ./test does it for you), then run them again.");
        Address = $"http://127.0.0.1:{FreePort()}";
        program = Start();
        await UntilReadyAsync();
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = executable, Args = BrowserFlags, Timeout = 120_000 });
    }

    /// <summary>A new visitor: nothing remembered.</summary>
    public async Task<IPage> VisitAsync(int width = 1280, int height = 900)
    {
        var context = await browser!.NewContextAsync(new() { BaseURL = Address, ViewportSize = new() { Width = width, Height = height } });
        context.SetDefaultTimeout(60_000);
        return await context.NewPageAsync();
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null)
            await browser.DisposeAsync();
        playwright?.Dispose();
        if (program is not null)
        {
            program.Kill(entireProcessTree: true);
            await program.WaitForExitAsync();
            program.Dispose();
        }

        if (Directory.Exists(folder))
            Directory.Delete(folder, recursive: true);
    }

    private Process Start()
    {
        // From the build output, in Production: what a person runs, not what a developer sees.
        var start = new ProcessStartInfo("dotnet")
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Path.GetTempPath(),
        };
        start.Environment["ASPNETCORE_ENVIRONMENT"] = "Production";
        foreach (var word in new[] { ProgramPath(), "serve", "--urls", Address, "--data", Path.Combine(folder, "data") })
            start.ArgumentList.Add(word);
        var started = Process.Start(start) ?? throw new InvalidOperationException("The program did not start.");
        // Drained, so that a full pipe never stops the program.
        started.OutputDataReceived += (_, _) => { };
        started.ErrorDataReceived += (_, line) => Console.Error.WriteLine(line.Data);
        started.BeginOutputReadLine();
        started.BeginErrorReadLine();
        return started;
    }

    private async Task UntilReadyAsync()
    {
        using var client = new HttpClient();
        for (var waited = Stopwatch.StartNew(); waited.Elapsed < TimeSpan.FromMinutes(2);)
        {
            if (program!.HasExited)
                throw new InvalidOperationException($"The program ended with {program.ExitCode} before it was ready.");
            try
            {
                if ((await client.GetAsync($"{Address}/health/ready")).IsSuccessStatusCode)
                    return;
            }
            catch (HttpRequestException)
            {
                // not listening yet
            }

            await Task.Delay(200);
        }

        throw new TimeoutException("The program was not ready within two minutes.");
    }

    /// <summary>The shell's own build output, of the same configuration as these tests.</summary>
    private static string ProgramPath()
    {
        var root = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(root, "Silkwright.slnx")))
            root = Path.GetDirectoryName(root) ?? throw new InvalidOperationException("The tests run outside the repository.");
        var built = Path.GetRelativePath(Path.Combine(root, "tests", "Browser"), AppContext.BaseDirectory);
        var path = Path.Combine(root, "src", "Silkwright.Cli", built, "Silkwright.Cli.dll");
        return File.Exists(path) ? path : throw new InvalidOperationException($"The program is not built at {path}. Build the solution, then run these tests again.");
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
