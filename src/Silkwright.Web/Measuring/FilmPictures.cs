using Silkwright.Estimates;
using Silkwright.Film.Measuring;
using Silkwright.Film.Pictures;
using Silkwright.Records.Films;

namespace Silkwright.Web.Measuring;

/// <summary>Pictures of stored films: the whole small, any part of it in tiles, a spot at full resolution.</summary>
internal static class FilmPictures
{
    private const int MostSidePx = 1600;
    private const double MostCutMm = 20;

    // The heat of a film of 1.8 gigapixels takes some 270 MB while it is drawn (./bench film); as many at once as there are cores is all that helps.
    private static readonly SemaphoreSlim Places = new(Environment.ProcessorCount);

    private static readonly TimeSpan KeptFor = TimeSpan.FromDays(1);

    public static void Map(IEndpointRouteBuilder routes)
    {
        _ = routes.MapGet("/films/{film}/preview.png", (string film, int? side, FilmRecords films, HttpResponse response, CancellationToken cancel) =>
                AnswerAsync(films, film, response, (path, options) => FilmPreview.Png(path, options, Math.Clamp(side ?? 400, 16, MostSidePx), cancel), cancel))
            .CacheOutput(policy => policy.SetVaryByQuery("side").Expire(KeptFor)).ExcludeFromDescription();
        _ = routes.MapGet("/films/{film}/heat.png", (string film, [AsParameters] HeatQuery query, FilmRecords films, HttpResponse response, CancellationToken cancel) =>
                AnswerAsync(films, film, response, (path, options) => FilmHeat.Of(path, options, query.Widths, Math.Clamp(query.Side ?? 400, 16, MostSidePx), query.Colours, cancel).Png, cancel))
            .CacheOutput(policy => policy.SetVaryByQuery(HeatQuery.Names).Expire(KeptFor)).ExcludeFromDescription();
        _ = routes.MapGet("/films/{film}/detail.png", (string film, double x, double y, double side, FilmRecords films, HttpResponse response, CancellationToken cancel) =>
                AnswerAsync(films, film, response, (path, options) => FilmPreview.DetailPng(path, options, Finite(x, nameof(x)), Finite(y, nameof(y)), Math.Clamp(Finite(side, nameof(side)), 0.5, MostCutMm), cancel), cancel))
            .CacheOutput(policy => policy.SetVaryByQuery("x", "y", "side").Expire(KeptFor)).ExcludeFromDescription();
        _ = routes.MapGet("/films/{film}/tiles/{level:int}/{column:int}/{row:int}.png", TileAsync)
            .CacheOutput(policy => policy.Expire(KeptFor)).ExcludeFromDescription();
    }

    private static async Task<IResult> TileAsync(string film, int level, int column, int row, FilmShelf shelf, HttpResponse response, CancellationToken cancel)
    {
        if (FilmKey.Of(film) is not { } key || await shelf.OfAsync(key, cancel) is not { } tiles)
            return Results.NotFound();
        return Png(await InTurnAsync(() => tiles.Png(level, column, row, cancel), cancel), response);
    }

    private static async Task<IResult> AnswerAsync(
        FilmRecords films, string address, HttpResponse response, Func<string, FilmOptions, byte[]> draw, CancellationToken cancel)
    {
        if (FilmKey.Of(address) is not { } key || await films.FindAsync(key.Hash, cancel) is not { } film || !File.Exists(films.PathOf(film)))
            return Results.NotFound();
        return Png(await InTurnAsync(() => draw(films.PathOf(film), FilmBench.OptionsOf(key)), cancel), response);
    }

    private static async Task<byte[]?> InTurnAsync(Func<byte[]?> draw, CancellationToken cancel)
    {
        await Places.WaitAsync(cancel);
        try
        {
            return await Task.Run(draw, cancel);
        }
        finally
        {
            _ = Places.Release();
        }
    }

    private static IResult Png(byte[]? png, HttpResponse response)
    {
        if (png is null)
            return Results.NotFound();
        response.Headers.CacheControl = "private, max-age=31536000, immutable";
        return Results.Bytes(png, "image/png");
    }

    internal static double Finite(double value, string name) => double.IsFinite(value)
        ? value
        : throw new InputProblemException(new Problem($"{name} is not a number.", name, "Write it in millimetres, such as 12.5."));
}
