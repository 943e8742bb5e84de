using System.Text.Json.Nodes;
using Silkwright.Catalogue;

namespace Silkwright.Contracts;

/// <summary>What a catalogue changes against the kept one: the part "changes" of silkwright/catalogue/1.</summary>
public static class CatalogueChangesDocument
{
    /// <param name="difference">Against the kept one.</param>
    /// <param name="after">The catalogue itself: its conflicts are told along.</param>
    public static JsonObject Of(CatalogueDifference difference, EmulsionCatalogue after) => new()
    {
        ["new"] = DocumentJson.Of(difference.New),
        ["changed"] = new JsonArray([.. difference.Changed.Select(change => (JsonNode)Change(change))]),
        ["gone"] = DocumentJson.Of(difference.Gone),
        ["conflicts"] = new JsonArray([.. after.Sheets.SelectMany(sheet => sheet.Lines.Where(line => line.Conflicts)
            .Select(line => (JsonNode)Told(sheet.Emulsion, line)))]),
    };

    private static JsonObject Change(LineChange change)
    {
        var document = Told(change.Emulsion, change.Line);
        document.AddIfThere("before", change.Before is { } before ? CatalogueDocument.Source(before.Used) : null);
        document.AddIfThere("after", change.After is { } after ? CatalogueDocument.Source(after.Used) : null);
        document["onlyOtherSources"] = change.OnlyOthers;
        return document;
    }

    private static JsonObject Told(string emulsion, SheetLine line)
    {
        var document = new JsonObject { ["emulsion"] = emulsion };
        CatalogueDocument.AddProperty(document, line);
        return document;
    }
}
