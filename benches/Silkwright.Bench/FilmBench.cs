using System.Text.Json;

namespace Silkwright.Bench;

/// <summary>How fast each film of the demonstration is measured, alone.</summary>
internal static class FilmBench
{
    public static async Task RunAsync(string executable, string demo)
    {
        Console.WriteLine("silkwright film FILE --json, one film alone, second of two runs. Speed as the program tells it; time and memory of the process.");
        Console.WriteLine();
        Console.WriteLine($"{"film",-34}{"Mpx",7}{"Mpx/s",9}{"s",8}{"MiB",7}");
        foreach (var film in Directory.GetFiles(Path.Combine(demo, "films"), "*.tif").Order(StringComparer.Ordinal))
        {
            await ProgramRun.OfAsync(executable, "film", film, "--json");
            var run = await ProgramRun.OfAsync(executable, "film", film, "--json");
            using var document = JsonDocument.Parse(run.Output);
            var root = document.RootElement;
            var megapixels = root.GetProperty("widthPx").GetDouble() * root.GetProperty("heightPx").GetDouble() / 1e6;
            Console.WriteLine($"{Path.GetFileName(film),-34}{megapixels,7:0}{root.GetProperty("megapixelsPerSecond").GetDouble(),9:0}{run.Seconds,8:0.00}{run.PeakMiB,7:0}");
        }

        Console.WriteLine();
        await FullSizeBench.RunAsync();
    }
}
