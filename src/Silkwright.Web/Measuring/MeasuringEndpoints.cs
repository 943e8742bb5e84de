using Microsoft.AspNetCore.Mvc;
using Silkwright.Records.Films;
using Silkwright.Web.Jobs;
using Silkwright.Web.Look;

namespace Silkwright.Web.Measuring;

/// <summary>How far the measuring of a job's films is, and stopping it.</summary>
internal static class MeasuringEndpoints
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        _ = routes.MapGet("/jobs/{id}/progress", async (string id, JobDesk desk, CancellationToken cancel) =>
            await desk.SeeAsync(id, cancel) is not { } sight
                ? Results.NotFound()
                : Results.Ok(new
                {
                    films = sight.Films.Select(film => new
                    {
                        id = film.ElementId,
                        words = film.Words,
                        percent = Math.Round(100 * film.Share),
                        busy = film.IsBusy,
                        canStop = film.CanStop,
                    }),
                })).ExcludeFromDescription();
        _ = routes.MapPost("/films/{film}/stop", (string film, [FromForm] string back, FilmBench bench) =>
        {
            if (FilmKey.Of(film) is { } key)
                bench.Stop(key);
            return Results.LocalRedirect(LocalAddress.Or(back, "/jobs"));
        }).ExcludeFromDescription();
        _ = routes.MapPost("/films/{film}/measure", (string film, [FromForm] string back, FilmBench bench) =>
        {
            if (FilmKey.Of(film) is { } key)
                bench.AskAgain(key);
            return Results.LocalRedirect(LocalAddress.Or(back, "/jobs"));
        }).ExcludeFromDescription();
    }
}
