using System.Text.Json.Nodes;
using Silkwright.Coating.Learning;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>Readings worth taking, as other programs read them: silkwright/coat-next/1, docs/schema/coat-next.json.</summary>
public static class CoatNextDocument
{
    public static JsonObject Of((IReadOnlyList<CoatRow> Cases, IReadOnlyList<ReadingWorth> Worths, IReadOnlyList<CoatFlag> Flags, IReadOnlyList<Note> Notes) answer)
    {
        var document = DocumentJson.Start("coat-next");
        document["readings"] = new JsonArray([.. answer.Worths.Select(worth => (JsonNode)new JsonObject
        {
            ["line"] = answer.Cases[worth.Case].Line,
            ["shrinksUm"] = worth.ShrinksUm,
            ["shrinksUmPerMinute"] = worth.PerMinuteUm,
            ["cases"] = new JsonArray([.. worth.Narrowed.Select((one, i) => (JsonNode)new JsonObject { ["line"] = answer.Cases[i].Line, ["halfWidthUm"] = one.BeforeUm, ["halfWidthAfterUm"] = one.AfterUm })]),
        })]);
        document["flagged"] = CoatDocument.Flagged(answer.Flags);
        document["notes"] = DocumentJson.Of(answer.Notes);
        return document;
    }
}
