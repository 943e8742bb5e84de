using Silkwright.Film.Pictures;
using Silkwright.Moire;
using Silkwright.Contracts;
using Silkwright.Web.Questions;

namespace Silkwright.Web.Pictures;

/// <summary>The halftone drawn on the mesh, for the page.</summary>
internal static class MoirePictures
{
    // One picture takes both cores for some tenths of a second.
    private static readonly SemaphoreSlim Place = new(1);

    public static void Map(IEndpointRouteBuilder routes) =>
        _ = routes.MapGet("/mesh/moire.png", async (HttpRequest request, HttpResponse response, CancellationToken cancel) =>
        {
            var asked = MoireQuestion.Case(new GivenTexts(MoireForm.Of(request.Query).Given));
            await Place.WaitAsync(cancel);
            try
            {
                var picture = await Task.Run(() => MoirePicture.Of(asked, MoireDrawing.WidthPx, MoireDrawing.HeightPx), cancel);
                response.Headers.CacheControl = "private, max-age=86400";
                return Results.Bytes(MoireDrawing.Png(picture), "image/png");
            }
            finally
            {
                _ = Place.Release();
            }
        }).ExcludeFromDescription();
}
