using System.Globalization;
using System.Text.Json.Nodes;
using Silkwright.Artwork;
using Silkwright.Estimates;
using Silkwright.Plans;

namespace Silkwright.Contracts;

/// <summary>One spot of a film as other programs read it: silkwright/film-width/1, docs/schema/film-width.json, and <c>at</c> in silkwright/film/1.</summary>
public static class FilmSpotDocument
{
    /// <summary>A document of its own.</summary>
    /// <param name="file">The film's name.</param>
    /// <param name="spot">The spot.</param>
    /// <param name="verdict">How it compares with mesh and stencil; none: neither is known.</param>
    /// <param name="notes">What a reader should know.</param>
    public static JsonObject Of(string file, FilmSpot spot, SpotVerdict? verdict, IReadOnlyList<Note> notes)
    {
        var document = DocumentJson.Start("film-width");
        document["file"] = file;
        foreach (var (name, value) in Part(spot, verdict))
            document[name] = value?.DeepClone();
        document["notes"] = DocumentJson.Of(notes);
        return document;
    }

    /// <summary>The same as a part of a film's document.</summary>
    public static JsonObject Part(FilmSpot spot, SpotVerdict? verdict)
    {
        ArgumentNullException.ThrowIfNull(spot);
        var part = new JsonObject
        {
            ["words"] = SpotWords.Of(spot, verdict, Metric),
            ["xMm"] = spot.XMm,
            ["yMm"] = spot.YMm,
            ["kind"] = spot.IsImage ? "image" : "gap",
            ["isSpeck"] = spot.IsSpeck,
            ["widthUm"] = spot.WidthUm,
            ["lowUm"] = spot.LowUm,
        };
        part.AddIfThere("highUm", spot.HighUm);
        part["disc"] = new JsonObject { ["xMm"] = spot.DiscXMm, ["yMm"] = spot.DiscYMm, ["diameterUm"] = spot.WidthUm };
        part.AddIfThere("against", verdict is null ? null : new JsonObject
        {
            ["heldUm"] = verdict.HeldUm,
            ["rule"] = verdict.IsDotRule ? "dot" : "line",
            ["by"] = verdict.IsStencils ? "stencil" : "mesh",
            ["judgement"] = Names.Of(verdict.Judgement),
        });
        return part;
    }

    private static string Metric(double um) => string.Create(CultureInfo.InvariantCulture, $"{um / 1000:0.000} mm");
}
