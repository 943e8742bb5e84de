using System.Collections.Concurrent;
using System.Threading.Channels;
using Silkwright.Estimates;
using Silkwright.Film.Measuring;
using Silkwright.Records.Films;

namespace Silkwright.Web.Measuring;

/// <summary>Measures films behind the pages, one at a time, and tells how far it is.</summary>
public sealed class FilmBench(FilmRecords films, TimeProvider time, ILogger<FilmBench> log) : BackgroundService
{
    private readonly Channel<FilmKey> queue = Channel.CreateUnbounded<FilmKey>();
    private readonly ConcurrentDictionary<FilmKey, FilmWork> works = new();
    private readonly ConcurrentDictionary<FilmKey, CancellationTokenSource> stops = new();
    private long turns;

    /// <summary>What a measurement of a film as it comes is kept under; a new way of measuring measures stored films again.</summary>
    public static MeasuringKey KeyOf(string hash) => KeyOf(new FilmKey(hash));

    /// <summary>The same of a page of a PDF.</summary>
    public static MeasuringKey KeyOf(FilmKey film) => film.Measured(FilmMeasurer.Version);

    /// <summary>What a kept film's file cannot say.</summary>
    public static FilmOptions OptionsOf(FilmKey film) => new(film.Dpi, Page: film.Page);

    /// <summary>Asks for a film to be measured. Nothing happens when it is waiting, being measured, stopped or cannot be.</summary>
    public FilmWork Ask(FilmKey film)
    {
        if (works.TryAdd(film, Waiting()))
            _ = queue.Writer.TryWrite(film);
        return InLine(works[film]);
    }

    /// <summary>Asks again for a film that was stopped.</summary>
    public void AskAgain(FilmKey film)
    {
        if (works.TryGetValue(film, out var work) && !work.IsBusy && works.TryUpdate(film, Waiting(), work))
            _ = queue.Writer.TryWrite(film);
    }

    /// <summary>Stops the work on a film.</summary>
    public void Stop(FilmKey film)
    {
        if (stops.TryGetValue(film, out var stop))
        {
            stop.Cancel();
            if (works.TryGetValue(film, out var busy) && busy.State == FilmWorkState.Measuring)
                _ = works.TryUpdate(film, busy with { State = FilmWorkState.Stopping, Left = null }, busy);
        }
        else if (works.TryGetValue(film, out var work) && work.State == FilmWorkState.Waiting)
        {
            _ = works.TryUpdate(film, work with { State = FilmWorkState.Stopped }, work);
        }
    }

    private FilmWork Waiting() => FilmWork.Waiting(Interlocked.Increment(ref turns));

    private FilmWork InLine(FilmWork work) =>
        work.State == FilmWorkState.Waiting ? work with { Ahead = works.Values.Count(other => other.IsBusy && other.Turn < work.Turn) } : work;

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        try
        {
            await foreach (var film in queue.Reader.ReadAllAsync(stoppingToken))
            {
                if (works[film] is { State: FilmWorkState.Waiting } waiting)
                    await MeasureAsync(film, waiting, stoppingToken);
            }
        }
        catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
        {
            // the program ends
        }
    }

    private async Task MeasureAsync(FilmKey film, FilmWork waiting, CancellationToken ending)
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(ending);
        stops[film] = stop;
        try
        {
            // Stopped at the last moment.
            if (!works.TryUpdate(film, new FilmWork(FilmWorkState.Measuring, 0, []), waiting))
                return;
            var started = time.GetTimestamp();
            var progress = new Watched(share =>
            {
                if (works[film] is { State: FilmWorkState.Measuring } now)
                    _ = works.TryUpdate(film, FilmWork.Measuring(share, time.GetElapsedTime(started)), now);
            });
            _ = await films.MeasureOnceAsync(
                KeyOf(film),
                (path, cancel) => Task.Run(() => FilmMeasurer.Measure(path, OptionsOf(film), progress, time, cancel).Measurement, cancel),
                stop.Token);
            works[film] = new FilmWork(FilmWorkState.Measured, 1, []);
        }
        catch (OperationCanceledException)
        {
            works[film] = new FilmWork(FilmWorkState.Stopped, 0, []);
        }
        catch (InputProblemException fault)
        {
            works[film] = new FilmWork(FilmWorkState.Failed, 0, fault.Problems);
        }
#pragma warning disable CA1031 // One film that cannot be measured must not end the bench for all others.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            log.LogError(fault, "Film {Film} could not be measured", film.Address);
            works[film] = new FilmWork(FilmWorkState.Failed, 0, [new Problem("Measuring this film failed here.", "film", "The program's log says why; please report it.")]);
        }
        finally
        {
            _ = stops.TryRemove(film, out _);
        }
    }

    /// <summary>Reports at once, on the measuring thread: a later share never comes before an earlier one.</summary>
    private sealed class Watched(Action<double> report) : IProgress<double>
    {
        public void Report(double value) => report(value);
    }
}
