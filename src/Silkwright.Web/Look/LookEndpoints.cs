using Microsoft.AspNetCore.Mvc;

namespace Silkwright.Web.Look;

/// <summary>The files of the look, and the choices a person makes about it.</summary>
internal static class LookEndpoints
{
    private const string AYear = "public, max-age=31536000, immutable";

    public static void Map(IEndpointRouteBuilder routes)
    {
        _ = routes.MapGet("/look/{name}", (string name, HttpResponse response) =>
        {
            if (!Asset.All.TryGetValue(name, out var asset))
                return Results.NotFound();
            response.Headers.CacheControl = AYear;
            return Results.Bytes(asset.Bytes, asset.ContentType);
        }).ExcludeFromDescription();
        _ = routes.MapPost("/choices", (HttpResponse response, [FromForm] string name, [FromForm] string value, [FromForm] string back) =>
        {
            if (name is Viewer.UnitsCookie or Viewer.LightCookie && value is "us" or "metric" or "safe" or "day")
                Viewer.Keep(response, name, value);
            return Results.LocalRedirect(LocalAddress.Or(back, "/"));
        }).ExcludeFromDescription();
    }
}
