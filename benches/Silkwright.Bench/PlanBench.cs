namespace Silkwright.Bench;

/// <summary>How long a plan takes from the shell, with its films measured anew and remembered.</summary>
internal static class PlanBench
{
    private const int WarmRuns = 3;

    public static async Task RunAsync(string executable, string demo)
    {
        Console.WriteLine("silkwright plan JOB --json, a process of its own each time. Measured anew: the films are not yet known (--shop). Remembered:");
        Console.WriteLine($"they are (--data). Median of {WarmRuns} after one unmeasured run; largest memory of all.");
        Console.WriteLine();
        Console.WriteLine($"{"job",-22}{"films",6}{"anew, s",10}{"MiB",7}{"remembered, s",15}{"MiB",7}");
        var data = Directory.CreateTempSubdirectory("silkwright-bench-").FullName;
        try
        {
            await ProgramRun.OfAsync(executable, "demo", "--from", demo, "--data", data);
            foreach (var job in Directory.GetFiles(Path.Combine(demo, "jobs"), "*.json").Order(StringComparer.Ordinal))
            {
                var films = File.ReadAllText(job).Split("\"film\"").Length - 1;
                var anew = await MedianAsync(executable, "plan", job, "--shop", Path.Combine(demo, "shop.json"), "--json");
                var remembered = await MedianAsync(executable, "plan", job, "--data", data, "--json");
                Console.WriteLine(
                    $"{Path.GetFileNameWithoutExtension(job),-22}{films,6}{anew.Seconds,10:0.00}{anew.PeakMiB,7:0}{remembered.Seconds,15:0.00}{remembered.PeakMiB,7:0}");
            }
        }
        finally
        {
            Directory.Delete(data, recursive: true);
        }
    }

    private static async Task<ProgramRun> MedianAsync(string executable, params string[] arguments)
    {
        await ProgramRun.OfAsync(executable, arguments);
        var runs = new List<ProgramRun>();
        for (var i = 0; i < WarmRuns; i++)
            runs.Add(await ProgramRun.OfAsync(executable, arguments));
        var median = runs.OrderBy(run => run.Seconds).ElementAt(WarmRuns / 2);
        return median with { PeakMiB = runs.Max(run => run.PeakMiB) };
    }
}
