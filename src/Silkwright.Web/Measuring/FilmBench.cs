using System.Collections.Concurrent;
using System.Threading.Channels;
using Silkwright.Estimates;
using Silkwright.Film.Measuring;
using Silkwright.Records.Films;

namespace Silkwright.Web.Measuring;

/// <summary>Measures films behind the pages, one at a time, and tells how far it is.</summary>
public sealed class FilmBench(FilmRecords films, TimeProvider time, ILogger<FilmBench> log) : BackgroundService
{
    private readonly Channel<string> queue = Channel.CreateUnbounded<string>();
    private readonly ConcurrentDictionary<string, FilmWork> works = new();
    private readonly ConcurrentDictionary<string, CancellationTokenSource> stops = new();

    /// <summary>What a measurement of a film as it comes is kept under; a new way of measuring measures stored films again.</summary>
    public static MeasuringKey KeyOf(string hash) => new(hash, null, Negative: false, FilmMeasurer.Version);

    /// <summary>How the work on a film stands; none when nobody has asked for it.</summary>
    public FilmWork? Of(string hash) => works.GetValueOrDefault(hash);

    /// <summary>Asks for a film to be measured. Nothing happens when it is waiting, being measured, stopped or cannot be.</summary>
    public FilmWork Ask(string hash)
    {
        if (works.TryAdd(hash, FilmWork.Waiting))
            _ = queue.Writer.TryWrite(hash);
        return works[hash];
    }

    /// <summary>Asks again for a film that was stopped.</summary>
    public void AskAgain(string hash)
    {
        if (works.TryGetValue(hash, out var work) && !work.IsBusy && works.TryUpdate(hash, FilmWork.Waiting, work))
            _ = queue.Writer.TryWrite(hash);
    }

    /// <summary>Stops the work on a film.</summary>
    public void Stop(string hash)
    {
        if (stops.TryGetValue(hash, out var stop))
            stop.Cancel();
        else if (works.TryGetValue(hash, out var work) && work.State == FilmWorkState.Waiting)
            _ = works.TryUpdate(hash, work with { State = FilmWorkState.Stopped }, work);
    }

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        try
        {
            await foreach (var hash in queue.Reader.ReadAllAsync(stoppingToken))
            {
                if (works[hash].State == FilmWorkState.Waiting)
                    await MeasureAsync(hash, stoppingToken);
            }
        }
        catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
        {
            // the program ends
        }
    }

    private async Task MeasureAsync(string hash, CancellationToken ending)
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(ending);
        stops[hash] = stop;
        works[hash] = new FilmWork(FilmWorkState.Measuring, 0, []);
        try
        {
            var progress = new Watched(share => works[hash] = new FilmWork(FilmWorkState.Measuring, share, []));
            _ = await films.MeasureOnceAsync(
                KeyOf(hash),
                (path, cancel) => Task.Run(() => FilmMeasurer.Measure(path, new FilmOptions(), progress, time, cancel).Measurement, cancel),
                stop.Token);
            works[hash] = new FilmWork(FilmWorkState.Measured, 1, []);
        }
        catch (OperationCanceledException)
        {
            works[hash] = new FilmWork(FilmWorkState.Stopped, 0, []);
        }
        catch (InputProblemException fault)
        {
            works[hash] = new FilmWork(FilmWorkState.Failed, 0, fault.Problems);
        }
#pragma warning disable CA1031 // One film that cannot be measured must not end the bench for all others.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            log.LogError(fault, "Film {Hash} could not be measured", hash);
            works[hash] = new FilmWork(FilmWorkState.Failed, 0, [new Problem("Measuring this film failed here.", "film", "The program's log says why; please report it.")]);
        }
        finally
        {
            _ = stops.TryRemove(hash, out _);
        }
    }

    /// <summary>Reports at once, on the measuring thread: a later share never comes before an earlier one.</summary>
    private sealed class Watched(Action<double> report) : IProgress<double>
    {
        public void Report(double value) => report(value);
    }
}
