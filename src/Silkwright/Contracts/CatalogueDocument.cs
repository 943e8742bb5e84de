using System.Globalization;
using System.Text.Json.Nodes;
using Silkwright.Catalogue;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>A catalogue as other programs read it: silkwright/catalogue/1, docs/schema/catalogue.json.</summary>
public static class CatalogueDocument
{
    /// <summary>The rule behind every verdict of a sheet.</summary>
    public static readonly IReadOnlyList<Note> Rules =
    [
        new("The value used stands on the firmest ground, and among equals on the newest date. Two numbers conflict where each lies outside the other's usual spread; spreads of sources are common practice.", Ground.CommonPractice),
    ];

    public static JsonObject Of(EmulsionCatalogue catalogue) => Of(catalogue.Sheets);

    /// <param name="sheets">The sheets asked for.</param>
    public static JsonObject Of(IEnumerable<CatalogueSheet> sheets)
    {
        var document = DocumentJson.Start("catalogue");
        document["emulsions"] = new JsonArray([.. sheets.Select(sheet => (JsonNode)Sheet(sheet))]);
        document["notes"] = DocumentJson.Of(Rules);
        return document;
    }

    private static JsonObject Sheet(CatalogueSheet sheet)
    {
        var document = new JsonObject { ["emulsion"] = sheet.Emulsion };
        document.AddIfThere("family", sheet.Family is { } family ? Names.Of(family) : null);
        document["values"] = new JsonArray([.. sheet.Lines.Select(line => (JsonNode)Line(line))]);
        document["questions"] = new JsonArray([.. sheet.Questions.Select(property => (JsonNode)new JsonObject
        {
            ["property"] = property.Name,
            ["meaning"] = property.Meaning,
            ["howToMeasure"] = property.HowToMeasure,
        })]);
        return document;
    }

    private static JsonObject Line(SheetLine line)
    {
        var document = new JsonObject();
        AddProperty(document, line);
        document["conflicts"] = line.Conflicts;
        document["used"] = Source(line.Used);
        document["others"] = new JsonArray([.. line.Others.Select(other =>
        {
            var source = Source(other.Entry);
            source["conflicts"] = other.Conflicts;
            return (JsonNode)source;
        })]);
        return document;
    }

    internal static void AddProperty(JsonObject document, SheetLine line)
    {
        document["property"] = line.Property.Name;
        if (line.At is { } at)
            document[line.Property.AtUnit == "g" ? "atGrams" : "atCelsius"] = at;
    }

    internal static JsonObject Source(CatalogueEntry entry)
    {
        var document = entry.Estimate is { } estimate
            ? new JsonObject { ["value"] = estimate.Value, ["low"] = estimate.Low, ["high"] = estimate.High }
            : new JsonObject { ["value"] = entry.Value.Word };
        document["ground"] = Names.Of(entry.Ground);
        document["source"] = entry.Source;
        document.AddIfThere("date", entry.Date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        return document;
    }
}
