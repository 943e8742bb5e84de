using System.Text.Json.Nodes;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Film.Measuring;
using Silkwright.Web.Measuring;

namespace Silkwright.Web.Api;

/// <summary>A film measured and given back as the shell's document. Nothing is kept.</summary>
internal static class FilmEndpoints
{
    public static void Map(IEndpointRouteBuilder api) => api
        .MapPost("/film", async (HttpRequest request, FilmDoor door, TimeProvider time, CancellationToken cancel) =>
        {
            if (!request.HasFormContentType || (await request.ReadFormAsync(cancel)).Files is not [var upload, ..])
                throw new InputProblemException(new Problem("There is no film in the request.", "body", "Send it as multipart/form-data, one file."));
            var name = FilmDoor.NameOf(upload);
            var reading = await door.WithCheckedAsync(
                upload, path => Task.Run(() => FilmMeasurer.Measure(path, new FilmOptions(), null, time, cancel), cancel), cancel);
            return Documents.Ok(FilmDocument.Of([(reading.Measurement with { File = name }, reading.MegapixelsPerSecond)]));
        })
        .WithSummary("What a film demands")
        .WithDescription("Body: multipart/form-data with one TIFF or PNG.")
        .Produces<JsonObject>()
        .ProducesProblem(StatusCodes.Status400BadRequest)
        .DisableAntiforgery();
}
