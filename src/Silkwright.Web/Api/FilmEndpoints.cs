using System.Text.Json.Nodes;
using Silkwright.Artwork;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Film.Measuring;
using Silkwright.Film.Places;
using Silkwright.Web.Measuring;

namespace Silkwright.Web.Api;

/// <summary>Films measured and given back as the shell's document. Nothing is kept.</summary>
internal static class FilmEndpoints
{
    public static void Map(IEndpointRouteBuilder api) => api
        .MapPost("/film", async (HttpRequest request, FilmDoor door, TimeProvider time, CancellationToken cancel) =>
        {
            var uploads = request.HasFormContentType ? (await request.ReadFormAsync(cancel)).Files : null;
            if (uploads is not { Count: > 0 })
                throw new InputProblemException(new Problem("There is no film in the request.", "body", "Send it as multipart/form-data, one file a film."));
            QuestionEndpoints.ThrowIfUnknown(request, [.. FilmQuestion.Fields.Select(field => field.Name)]);
            var question = FilmQuestion.Read(new GivenTexts(request.Query.ToDictionary(q => q.Key, q => q.Value.ToString())));
            var films = new List<(FilmMeasurement Film, double? MegapixelsPerSecond)>();
            var spots = new List<FilmSpot>();
            foreach (var upload in uploads)
            {
                var reading = await door.WithCheckedAsync(upload, question.Options, path => Task.Run(() => Measure(path), cancel), cancel);
                films.Add((reading.Measurement with { File = FilmDoor.NameOf(upload) }, reading.MegapixelsPerSecond));
            }

            return Documents.Ok(FilmDocument.Of(films, question.Frame, question.Mesh, question.At is null ? null : spots));

            FilmReading Measure(string path)
            {
                if (question.At is not { } at)
                    return FilmMeasurer.Measure(path, question.Options, null, time, cancel);
                FilmSpots.ThrowIfOff(path, question.Options, at.XMm, at.YMm);
                var reading = FilmMeasurer.Measure(path, question.Options, null, time, cancel);
                spots.Add(FilmSpots.At(path, question.Options, at.XMm, at.YMm, reading.Measurement.Halftones, cancel));
                return reading;
            }
        })
        .WithSummary("What films demand, and whether those of one job agree")
        .WithDescription($"Body: multipart/form-data with the films of one job. In the query string:\n{string.Join("\n", FilmQuestion.Fields.Select(f => $"{f.Name}: {f.Meaning}."))}")
        .Produces<JsonObject>()
        .ProducesProblem(StatusCodes.Status400BadRequest)
        .DisableAntiforgery();
}
