using System.Collections.Concurrent;
using Silkwright.Cli.Printing;
using Silkwright.Estimates;
using Silkwright.Film.Measuring;

namespace Silkwright.Cli;

/// <summary>Measures films side by side, a film a core; those of the demonstration are drawn first where they are missing.</summary>
internal static class FilmWork
{
    /// <summary>The readings, in the order of the paths.</summary>
    /// <param name="paths">The films.</param>
    /// <param name="measure">Measures the film of a number in that order.</param>
    /// <param name="surroundings">Where progress goes.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="InputProblemException">The faults of every film that can't be measured.</exception>
    public static async Task<T[]> MeasureAllAsync<T>(
        IReadOnlyList<string> paths,
        Func<int, IProgress<double>, CancellationToken, Task<T>> measure,
        Surroundings surroundings,
        CancellationToken cancel)
    {
        await DemoFolder.DrawIfMissingAsync(paths, surroundings, cancel);
        return await FilmWatch.RunAsync(surroundings, [.. paths.Select(path => PlainText.Of(Path.GetFileName(path)))], "measuring", async progress =>
        {
            var readings = new T[paths.Count];
            var faults = new ConcurrentDictionary<int, IReadOnlyList<Problem>>();
            var atOnce = new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount, CancellationToken = cancel };
            await Parallel.ForEachAsync(Enumerable.Range(0, paths.Count), atOnce, async (i, stop) =>
            {
                try
                {
                    readings[i] = await measure(i, progress[i], stop);
                }
                catch (InputProblemException fault)
                {
                    faults[i] = fault.Problems;
                }
            });
            return faults.IsEmpty ? readings : throw new InputProblemException([.. faults.OrderBy(fault => fault.Key).SelectMany(fault => fault.Value)]);
        });
    }

    /// <summary>Measures one film away from the thread that waits.</summary>
    public static Task<FilmReading> MeasureAsync(
        string path, FilmOptions options, IProgress<double> progress, Surroundings surroundings, CancellationToken cancel) =>
        Task.Run(() => FilmMeasurer.Measure(path, options, progress, surroundings.Time, cancel), cancel);
}
