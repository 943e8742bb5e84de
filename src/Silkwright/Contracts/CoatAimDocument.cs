using System.Text.Json.Nodes;
using Silkwright.Coating.Learning;

namespace Silkwright.Contracts;

/// <summary>Strokes for a wanted thickness as other programs read them: silkwright/coat-aim/1, docs/schema/coat-aim.json.</summary>
public static class CoatAimDocument
{
    public static JsonObject Of(CoatAimAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var document = DocumentJson.Start("coat-aim");
        document["wantedUm"] = answer.WantedUm;
        document["toleranceUm"] = answer.ToleranceUm;
        foreach (var (name, node) in Part(answer.Aim.Best))
            document[name] = node?.DeepClone();
        document["oneReadingUm"] = DocumentJson.Of(answer.Aim.Laid.EomUm);
        document["chanceAfterReadingsPercent"] = answer.Aim.ChanceAfterReadingsPercent;
        document["gramsPerScreen"] = DocumentJson.Of(answer.GramsPerScreen);
        document["m2PerLitre"] = DocumentJson.Of(answer.M2PerLitre);
        document["because"] = DocumentJson.Of(CoatAimWords.Because(answer));
        document.AddIfThere("shorter", answer.Aim.Shorter is { } shorter ? Part(shorter) : null);
        document["others"] = new JsonArray([.. answer.Aim.Others.Select(other => (JsonNode)Part(other))]);
        document["notes"] = DocumentJson.Of(answer.Notes);
        return document;
    }

    private static JsonObject Part(AimedCoat aimed)
    {
        var part = new JsonObject { ["strokes"] = StrokeText.Write(aimed.Coat.Strokes) };
        part.AddIfThere("operator", aimed.Coat.Operator);
        part.AddIfThere("trough", aimed.Coat.Trough.Id.Length > 0 ? aimed.Coat.Trough.Id : null);
        part["faceCoats"] = aimed.Coat.Strokes.Count(stroke => stroke.AfterDrying);
        part["meanUm"] = DocumentJson.Of(aimed.MeanUm);
        part["chancePercent"] = aimed.ChancePercent;
        return part;
    }
}
