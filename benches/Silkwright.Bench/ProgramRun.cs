using System.Diagnostics;

namespace Silkwright.Bench;

/// <summary>One run of the program in a process of its own.</summary>
/// <param name="Seconds">From start to end. [s]</param>
/// <param name="PeakMiB">Largest memory it held, as last read while it ran. [MiB]</param>
/// <param name="Output">What it wrote on its output.</param>
internal sealed record ProgramRun(double Seconds, double PeakMiB, string Output)
{
    private const double BytesPerMiB = 1024 * 1024;

    /// <summary>How often the peak is read. The system keeps it, so only growth in the last such moment is missed. [ms]</summary>
    private const int LookEveryMs = 5;

    /// <exception cref="InvalidOperationException">The program did not end with 0.</exception>
    public static async Task<ProgramRun> OfAsync(string executable, params string[] arguments)
    {
        var start = new ProcessStartInfo(executable, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        var clock = Stopwatch.StartNew();
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync();
        var error = process.StandardError.ReadToEndAsync();
        long peak = 0;
        while (!process.HasExited)
        {
            peak = Math.Max(peak, Peak(process));
            await Task.Delay(LookEveryMs);
        }

        var seconds = clock.Elapsed.TotalSeconds;
        await process.WaitForExitAsync();
        return process.ExitCode == 0
            ? new ProgramRun(seconds, peak / BytesPerMiB, await output)
            : throw new InvalidOperationException($"{executable} {string.Join(' ', arguments)} ended with {process.ExitCode}: {await error}");
    }

    private static long Peak(Process process)
    {
        try
        {
            process.Refresh();
            return process.PeakWorkingSet64;
        }
        catch (InvalidOperationException)
        {
            return 0; // it has just ended
        }
    }
}
