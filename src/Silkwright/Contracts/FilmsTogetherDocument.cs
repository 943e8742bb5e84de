using System.Text.Json.Nodes;
using Silkwright.Plans;

namespace Silkwright.Contracts;

/// <summary>The films of one job held against each other, as <c>film</c> and <c>plan</c> write it.</summary>
internal static class FilmsTogetherDocument
{
    public static JsonObject Of(FilmsTogether films)
    {
        var document = new JsonObject();
        document.AddIfThere("sameSize", films.SameSize);
        document.AddIfThere("sameDpi", films.SameDpi);
        if (films.SameSize is not null)
        {
            document["registerOffsetsMm"] = new JsonArray([.. films.Register.Select(Register)]);
            document["mirroredOrDuplicate"] = new JsonArray([.. films.MirroredOrDuplicate.Select(Pair)]);
            document["rightReading"] = ReadingSide.Of(films);
        }

        document.AddIfThere("fitsFrame", films.FitsFrame);
        document["remarks"] = DocumentJson.Of(films.Remarks);
        return document;
    }

    private static JsonNode Register(RegisteredFilm film) => new JsonObject
    {
        ["file"] = film.File,
        ["against"] = film.Against,
        ["xMm"] = film.Offset.XMm,
        ["yMm"] = film.Offset.YMm,
        ["turnDegrees"] = film.Offset.TurnDegrees,
        ["stretchPercent"] = film.Offset.StretchPercent,
        ["marks"] = film.Offset.Marks,
        ["mostMm"] = film.Offset.MostMm,
    };

    private static JsonNode Pair(FilmPair pair)
    {
        var document = new JsonObject
        {
            ["files"] = new JsonArray(pair.First, pair.Second),
            ["kind"] = pair.Resemblance.Turn == Artwork.FilmTurn.None ? "duplicate" : Names.Of(pair.Resemblance.Turn),
            ["toldBy"] = Names.Of(pair.Resemblance.Ground),
        };
        document.AddIfThere("alikePercent", pair.Resemblance.AlikePercent);
        return document;
    }
}
