using System.Collections.Concurrent;

namespace Silkwright.Light;

/// <summary>Work in pieces, each taken up by whichever thread is free.</summary>
internal static class Shared
{
    /// <summary>Does all pieces; one by one, since pieces handed out in runs leave threads idle at the end.</summary>
    /// <param name="pieces">How many.</param>
    /// <param name="threads">How many at once; none: one a core.</param>
    /// <param name="piece">Does one, by its number.</param>
    /// <param name="progress">Share done. [0..1]</param>
    /// <param name="cancel">Stops the work.</param>
    public static void Run(int pieces, int? threads, Action<int> piece, IProgress<double>? progress, CancellationToken cancel)
    {
        var done = 0;
        Parallel.ForEach(
            Partitioner.Create(Enumerable.Range(0, pieces), EnumerablePartitionerOptions.NoBuffering),
            new ParallelOptions { MaxDegreeOfParallelism = threads ?? Environment.ProcessorCount, CancellationToken = cancel },
            number =>
            {
                piece(number);
                progress?.Report((double)Interlocked.Increment(ref done) / pieces);
            });
    }
}
