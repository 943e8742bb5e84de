using Silkwright.Film.Measuring;
using Silkwright.Records.Films;

namespace Silkwright.Web.Measuring;

/// <summary>Pictures of stored films: the whole small, a spot at full resolution.</summary>
internal static class FilmPictures
{
    private const int MostSidePx = 1600;
    private const double MostCutMm = 20;
    private static readonly TimeSpan KeptFor = TimeSpan.FromDays(1);

    public static void Map(IEndpointRouteBuilder routes)
    {
        _ = routes.MapGet("/films/{hash}/preview.png", (string hash, int? side, FilmRecords films, HttpResponse response, CancellationToken cancel) =>
                AnswerAsync(films, hash, response, path => FilmPreview.Png(path, new FilmOptions(), Math.Clamp(side ?? 400, 16, MostSidePx), cancel), cancel))
            .CacheOutput(policy => policy.SetVaryByQuery("side").Expire(KeptFor)).ExcludeFromDescription();
        _ = routes.MapGet("/films/{hash}/detail.png", (string hash, double x, double y, double side, FilmRecords films, HttpResponse response, CancellationToken cancel) =>
                AnswerAsync(films, hash, response, path => FilmPreview.DetailPng(path, new FilmOptions(), x, y, Math.Clamp(side, 0.5, MostCutMm), cancel), cancel))
            .CacheOutput(policy => policy.SetVaryByQuery("x", "y", "side").Expire(KeptFor)).ExcludeFromDescription();
    }

    private static async Task<IResult> AnswerAsync(
        FilmRecords films, string hash, HttpResponse response, Func<string, byte[]> draw, CancellationToken cancel)
    {
        if (await films.FindAsync(hash, cancel) is not { } film || !File.Exists(films.PathOf(film)))
            return Results.NotFound();
        var png = await Task.Run(() => draw(films.PathOf(film)), cancel);
        response.Headers.CacheControl = "private, max-age=31536000, immutable";
        return Results.Bytes(png, "image/png");
    }
}
