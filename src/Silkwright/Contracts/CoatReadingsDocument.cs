using System.Text.Json.Nodes;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>How many readings are needed, as other programs read it: silkwright/coat-readings/1, docs/schema/coat-readings.json.</summary>
public static class CoatReadingsDocument
{
    public static JsonObject Of(CoatReadingsNeeded needed)
    {
        var document = DocumentJson.Start("coat-readings");
        document["wantedUm"] = needed.WantedUm;
        document.AddIfThere("readingsNeeded", needed.Needed);
        document.AddIfThere("readingsNeededAtWorst", needed.NeededAtWorst);
        document["standardDeviationUm"] = DocumentJson.Of(needed.SpreadUm);
        if (needed.IsRepeated)
            document["gauge"] = CoatDocument.Gauge(needed.SpreadUm);
        document["flagged"] = CoatDocument.Flagged(needed.Flags);
        document["notes"] = DocumentJson.Of(needed.Needed is null ? [.. needed.Notes, new Note("It would take more than a thousand readings: a closer gauge, or a wider wish.")] : needed.Notes);
        return document;
    }
}
