using Silkwright.Estimates;
using Silkwright.Film.Measuring;
using Silkwright.Film.Pictures;
using Silkwright.Records.Films;

namespace Silkwright.Web.Measuring;

/// <summary>Pictures of stored films: the whole small, a spot at full resolution.</summary>
internal static class FilmPictures
{
    private const int MostSidePx = 1600;
    private const double MostCutMm = 20;
    // A picture of the largest film takes some 70 MB while it is drawn; as many at once as there are cores is all that helps.
    private static readonly SemaphoreSlim Places = new(Environment.ProcessorCount);

    private static readonly TimeSpan KeptFor = TimeSpan.FromDays(1);

    public static void Map(IEndpointRouteBuilder routes)
    {
        _ = routes.MapGet("/films/{hash}/preview.png", (string hash, int? side, FilmRecords films, HttpResponse response, CancellationToken cancel) =>
                AnswerAsync(films, hash, response, path => FilmPreview.Png(path, new FilmOptions(), Math.Clamp(side ?? 400, 16, MostSidePx), cancel), cancel))
            .CacheOutput(policy => policy.SetVaryByQuery("side").Expire(KeptFor)).ExcludeFromDescription();
        _ = routes.MapGet("/films/{hash}/heat.png", (string hash, double held, int? side, FilmRecords films, HttpResponse response, CancellationToken cancel) =>
                AnswerAsync(films, hash, response, path => FilmHeat.Of(path, new FilmOptions(), Math.Clamp(Finite(held, nameof(held)), 10, 5000), Math.Clamp(side ?? 400, 16, MostSidePx), cancel).Png, cancel))
            .CacheOutput(policy => policy.SetVaryByQuery("held", "side").Expire(KeptFor)).ExcludeFromDescription();
        _ = routes.MapGet("/films/{hash}/detail.png", (string hash, double x, double y, double side, FilmRecords films, HttpResponse response, CancellationToken cancel) =>
                AnswerAsync(films, hash, response, path => FilmPreview.DetailPng(path, new FilmOptions(), Finite(x, nameof(x)), Finite(y, nameof(y)), Math.Clamp(Finite(side, nameof(side)), 0.5, MostCutMm), cancel), cancel))
            .CacheOutput(policy => policy.SetVaryByQuery("x", "y", "side").Expire(KeptFor)).ExcludeFromDescription();
    }

    private static async Task<IResult> AnswerAsync(
        FilmRecords films, string hash, HttpResponse response, Func<string, byte[]> draw, CancellationToken cancel)
    {
        if (await films.FindAsync(hash, cancel) is not { } film || !File.Exists(films.PathOf(film)))
            return Results.NotFound();
        await Places.WaitAsync(cancel);
        byte[] png;
        try
        {
            png = await Task.Run(() => draw(films.PathOf(film)), cancel);
        }
        finally
        {
            _ = Places.Release();
        }

        response.Headers.CacheControl = "private, max-age=31536000, immutable";
        return Results.Bytes(png, "image/png");
    }

    private static double Finite(double value, string name) => double.IsFinite(value)
        ? value
        : throw new InputProblemException(new Problem($"{name} is not a number.", name, "Write it in millimetres, such as 12.5."));
}
