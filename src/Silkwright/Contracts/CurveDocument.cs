using System.Globalization;
using System.Text.Json.Nodes;
using Silkwright.Estimates;
using Silkwright.Exposure;

namespace Silkwright.Contracts;

/// <summary>Cured depth by dose as other programs read it: silkwright/expose-curve/1, docs/schema/expose-curve.json.</summary>
public static class CurveDocument
{
    public static JsonObject Of(CureCurve curve)
    {
        var document = DocumentJson.Start("expose-curve");
        document["points"] = PointsOf(curve.Points);
        document.AddIfThere("depthUm", curve.DepthUm);
        document.AddIfThere("doseMjPerCm2", curve.DoseForDepth is { } dose ? DocumentJson.Of(dose) : null);
        document["thicknessPower"] = curve.ThicknessPower;
        document["notes"] = DocumentJson.Of(NotesOn(curve));
        return document;
    }

    /// <summary>A curve point by point.</summary>
    internal static JsonArray PointsOf(IReadOnlyList<CurePoint> points) => [.. points.Select(point => (JsonNode)new JsonObject
    {
        ["doseMjPerCm2"] = point.DoseMjPerCm2,
        ["curedDepthUm"] = DocumentJson.Of(point.DepthUm),
    })];

    /// <summary>What the curve rests on.</summary>
    public static IEnumerable<Note> NotesOn(CureCurve curve)
    {
        yield return new Note(string.Create(CultureInfo.InvariantCulture, $"Twice the thickness asks about {Math.Pow(2, curve.ThicknessPower):0.0} times the dose."), Ground.Model);
        if (curve.Bleaches)
            yield return new Note("Bleaching after Dill (1975): light straight down, nothing scattered, nothing thrown back.", Ground.Model);
        yield return new Note("Dose alone is taken to count, however slowly it comes (reciprocity). Very strong light on radical sensitisers and weak light in air do not keep to it.", Ground.Model);
        yield return new Note("A penetration depth and a critical dose belong to the lamp and the meter they were found with; laboratories found them up to 7 and 70 times apart for one resin.");
    }
}
