using Microsoft.Extensions.Logging.Abstractions;
using Silkwright.Film.TestFilms;
using Silkwright.Records.Films;
using Silkwright.Web.Measuring;

namespace Silkwright.Web.Tests.Measuring;

public sealed class FilmBenchTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    [Fact]
    public void A_film_that_waits_tells_how_many_come_before_it()
    {
        using var bench = Bench();
        Assert.Equal(["waiting", "waiting for the film before it", "waiting for 2 films before it"], "abc".Select(name => bench.Ask(Key(name)).Words));
        bench.Stop(Key('b'));
        Assert.Equal(["waiting", "stopped", "waiting for the film before it"], "abc".Select(name => bench.Ask(Key(name)).Words));

        // Asked again, it has lost its turn.
        bench.AskAgain(Key('b'));
        Assert.Equal(["waiting", "waiting for 2 films before it", "waiting for the film before it"], "abc".Select(name => bench.Ask(Key(name)).Words));
    }

    [Fact]
    public async Task A_film_that_is_stopped_says_so_at_once_and_is_measured_when_asked_again()
    {
        using var bench = Bench();
        var film = new FilmKey((await KeepAsync()).Hash);
        await bench.StartAsync(Cancel);
        _ = bench.Ask(film);
        await UntilAsync(FilmWorkState.Measuring);
        bench.Stop(film);
        Assert.Contains(bench.Ask(film).State, new[] { FilmWorkState.Stopping, FilmWorkState.Stopped });
        await UntilAsync(FilmWorkState.Stopped);
        Assert.Null(await web.Store.Films.FindMeasurementAsync(FilmBench.KeyOf(film), Cancel));
        bench.AskAgain(film);
        await UntilAsync(FilmWorkState.Measured);
        Assert.NotNull(await web.Store.Films.FindMeasurementAsync(FilmBench.KeyOf(film), Cancel));
        await bench.StopAsync(Cancel);

        async Task UntilAsync(FilmWorkState state)
        {
            for (var wait = 0; bench.Ask(film).State != state; wait++)
            {
                Assert.True(wait < 12_000 && bench.Ask(film).State != FilmWorkState.Failed, $"{bench.Ask(film)}");
                await Task.Delay(5, Cancel);
            }
        }
    }

    private FilmBench Bench() => new(web.Store.Films, TimeProvider.System, NullLogger<FilmBench>.Instance);

    private static FilmKey Key(char name) => new(new string(name, 64));

    /// <summary>Some seconds' work: 6000 x 6000 px full of slanted bars that are narrower here and there.</summary>
    private async Task<StoredFilm> KeepAsync()
    {
        var path = Path.Combine(Path.GetTempPath(), $"silkwright-bench-{Guid.NewGuid():N}.tif");
        try
        {
            FilmTiffWriter.Write(path, 6000, 6000, 1200, (top, rows, strip) =>
            {
                for (var y = 0; y < rows; y++)
                {
                    for (var x = 0; x < 6000; x++)
                        strip[x, y] = (x + (top + y) / 3) % 37 < 12 + (x * (long)(top + y) % 7);
                }
            });
            await using var content = File.OpenRead(path);
            return await web.Store.Films.AddAsync(content, "bars.tif", "Ada", Cancel);
        }
        finally
        {
            File.Delete(path);
        }
    }
}
