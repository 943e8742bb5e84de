using System.Diagnostics;

namespace Silkwright.Bench;

/// <summary>How long the page of a plan takes once its films are measured.</summary>
internal static class WebBench
{
    private const int Asks = 20;

    /// <summary>Longest wait for the films of a job to be measured. [min]</summary>
    private const int MostMinutes = 5;

    public static async Task RunAsync(string executable, string demo)
    {
        var data = Directory.CreateTempSubdirectory("silkwright-bench-").FullName;
        await ProgramRun.OfAsync(executable, "demo", "--from", demo, "--data", data);
        using var server = Process.Start(new ProcessStartInfo(executable, ["serve", "--data", data, "--urls", "http://127.0.0.1:0"]) { RedirectStandardOutput = true })!;
        try
        {
            var said = await server.StandardOutput.ReadLineAsync() ?? throw new InvalidOperationException("The web program did not start.");
            using var client = new HttpClient { BaseAddress = new Uri(said.Split(' ', ',')[3]) };
            Console.WriteLine($"GET /jobs/ID, films measured before; {Asks} times each, one after the other.");
            Console.WriteLine();
            Console.WriteLine($"{"job",-22}{"median, ms",12}{"slowest, ms",13}");
            foreach (var id in Directory.GetFiles(Path.Combine(demo, "jobs"), "*.json").Select(Path.GetFileNameWithoutExtension).Order(StringComparer.Ordinal))
            {
                await UntilPlannedAsync(client, id!);
                var times = new List<double>();
                for (var i = 0; i < Asks; i++)
                {
                    var clock = Stopwatch.StartNew();
                    _ = await client.GetStringAsync(new Uri($"/jobs/{id}", UriKind.Relative));
                    times.Add(clock.Elapsed.TotalMilliseconds);
                }

                times.Sort();
                Console.WriteLine($"{id,-22}{times[Asks / 2],12:0}{times[^1],13:0}");
            }
        }
        finally
        {
            server.Kill();
            await server.WaitForExitAsync();
            Directory.Delete(data, recursive: true);
        }
    }

    private static async Task UntilPlannedAsync(HttpClient client, string id)
    {
        var end = Stopwatch.StartNew();
        while (end.Elapsed < TimeSpan.FromMinutes(MostMinutes))
        {
            using var answer = await client.GetAsync(new Uri($"/api/jobs/{id}/plan", UriKind.Relative));
            if (answer.IsSuccessStatusCode)
                return;
            await Task.Delay(500);
        }

        throw new InvalidOperationException($"The films of {id} were not measured in {MostMinutes} minutes.");
    }
}
