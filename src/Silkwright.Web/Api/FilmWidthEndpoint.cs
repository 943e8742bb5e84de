using System.Text.Json.Nodes;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Film.Places;
using Silkwright.Plans;
using Silkwright.Records.Films;
using Silkwright.Web.Measuring;

namespace Silkwright.Web.Api;

/// <summary>How wide a stored film is at one spot.</summary>
internal static class FilmWidthEndpoint
{
    public static void Map(IEndpointRouteBuilder api) => api
        .MapGet("/films/{film}/width", AnswerAsync)
        .WithSummary("How wide image or gap is at one spot of a kept film")
        .WithDescription($"film: the hash it is kept under, with .p2 for a page of a PDF and .600dpi for the resolution it is drawn at. In the query string:\n{QuestionEndpoints.Describe(SpotQuestion.Fields)}")
        .Produces<JsonObject>()
        .ProducesProblem(StatusCodes.Status400BadRequest)
        .ProducesProblem(StatusCodes.Status404NotFound);

    private static async Task<IResult> AnswerAsync(string film, HttpRequest request, FilmShelf shelf, FilmRecords films, CancellationToken cancel)
    {
        QuestionEndpoints.ThrowIfUnknown(request, [.. SpotQuestion.Fields.Select(field => field.Name)]);
        var question = SpotQuestion.Read(QuestionEndpoints.Given(request));
        if (FilmKey.Of(film) is not { } key || await shelf.OfAsync(key, cancel) is not { } tiles)
            return ProblemDocument.Unknown("No film is kept under this hash.", $"film {film}", "Upload it with its job first.");
        var measured = await films.FindMeasurementAsync(FilmBench.KeyOf(key), cancel);
        var spot = await Task.Run(() => tiles.At(question.XMm, question.YMm, measured?.Halftones ?? [], cancel), cancel);
        Note[] notes = measured is null && question.Held is not null ? [new Note("This film is not measured yet, so its halftones are not known: the spot is judged by the rule for lines and gaps.")] : [];
        var verdict = question.Held is { } held ? SpotVerdict.Of(spot, held) : null;
        return Documents.Ok(FilmSpotDocument.Of((await films.FindAsync(key.Hash, cancel))!.FileName, spot, verdict, notes));
    }
}
