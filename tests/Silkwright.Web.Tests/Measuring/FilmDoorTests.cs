using Microsoft.AspNetCore.Http;
using Silkwright.Film.Measuring;
using Silkwright.Web.Measuring;

namespace Silkwright.Web.Tests.Measuring;

public sealed class FilmDoorTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    [Fact]
    public async Task However_many_send_films_at_once_no_more_are_worked_on_than_there_are_cores()
    {
        var door = new FilmDoor(web.Store.Films, web.Store.Folder);
        int now = 0, most = 0;
        await Task.WhenAll(Enumerable.Range(0, 8 * Environment.ProcessorCount).Select(async n =>
        {
            using var film = new MemoryStream(SmallFilm.Png);
            return await door.WithCheckedAsync(new FormFile(film, 0, film.Length, "films", $"film{n}.png"), new FilmOptions(), async path =>
            {
                InterlockedMax(ref most, Interlocked.Increment(ref now));
                await Task.Delay(20, Cancel);
                return Interlocked.Decrement(ref now);
            }, Cancel);
        }));

        Assert.InRange(most, 1, Environment.ProcessorCount);
        Assert.Empty(Directory.GetFiles(web.FilmsFolder));
    }

    private static void InterlockedMax(ref int most, int value)
    {
        for (var seen = Volatile.Read(ref most); value > seen;)
            seen = Interlocked.CompareExchange(ref most, value, seen);
    }
}
