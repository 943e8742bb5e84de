using System.Text.Json.Nodes;
using Silkwright.Estimates;
using Silkwright.Moire;

namespace Silkwright.Contracts;

/// <summary>Moiré as other programs read it: silkwright/mesh-moire/1, docs/schema/mesh-moire.json.</summary>
public static class MoireDocument
{
    private const double LinesPerInchPerCm = 2.54;

    public static JsonObject Of(MoireAnswer answer)
    {
        var asked = answer.Asked;
        var document = DocumentJson.Start("mesh-moire");
        document["countPerCm"] = asked.Mesh.CountPerCm;
        document["threadUm"] = asked.Mesh.ThreadUm;
        document["meshAngleDegrees"] = asked.MeshAngleDegrees;
        document["rulingPerCm"] = asked.RulingPerCm;
        document["rulingLpi"] = asked.RulingPerCm * LinesPerInchPerCm;
        document["angleDegrees"] = asked.AngleDegrees;
        document["threadsPerLine"] = asked.ThreadsPerLine;
        document["viewingMm"] = asked.ViewingMm;
        document.AddIfThere("tonePercent", asked.TonePercent);
        document.AddIfThere("knitCoursesPerCm", asked.KnitCoursesPerCm);
        document.AddIfThere("knitWalesPerCm", asked.KnitWalesPerCm);
        document["patterns"] = new JsonArray([.. answer.Patterns.Select(pattern => (JsonNode)Of(pattern))]);
        document["visibilityAtWorst"] = answer.VisibilityAtWorst;
        document["bestAngles"] = Choices(answer.BestAngles, choice => new JsonObject { ["angleDegrees"] = choice.AngleDegrees });
        document["bestRulings"] = Choices(answer.BestRulings, choice => new JsonObject
        {
            ["rulingPerCm"] = choice.RulingPerCm,
            ["rulingLpi"] = choice.RulingPerCm * LinesPerInchPerCm,
        });
        document["meshes"] = Choices(answer.Meshes, choice => new JsonObject
        {
            ["countPerCm"] = choice.Mesh.CountPerCm,
            ["threadUm"] = choice.Mesh.ThreadUm,
            ["threadsPerLine"] = choice.Asked.ThreadsPerLine,
        });
        document["notes"] = DocumentJson.Of(answer.Notes);
        return document;
    }

    /// <summary>One beat.</summary>
    public static JsonObject Of(MoirePattern pattern)
    {
        var orders = new JsonObject();
        Add("ruling", pattern.Ruling);
        Add("thread", pattern.Thread);
        Add("knit", pattern.Knit);
        return new()
        {
            ["periodMm"] = pattern.Vector.PeriodMm,
            ["angleDegrees"] = pattern.Vector.AngleDegrees,
            ["orders"] = orders,
            ["contrast"] = pattern.Contrast,
            ["visibility"] = pattern.Visibility,
            ["visibilityGround"] = Names.Of(Ground.Model),
        };

        void Add(string of, OrderPair? pair)
        {
            if (pair is { } there)
                orders[of] = new JsonArray(there.First, there.Second);
        }
    }

    /// <summary>A halftone on a mesh and its plainest beat.</summary>
    public static JsonObject Of(MoireChoice choice)
    {
        var document = new JsonObject { ["rulingLpi"] = choice.RulingPerCm * LinesPerInchPerCm, ["angleDegrees"] = choice.AngleDegrees };
        document.AddIfThere("pattern", choice.Pattern is { } pattern ? Of(pattern) : null);
        document["visibilityAtWorst"] = choice.VisibilityAtWorst;
        return document;
    }

    private static JsonArray Choices(IReadOnlyList<MoireChoice> choices, Func<MoireChoice, JsonObject> named) => new([.. choices.Select(choice =>
    {
        var entry = named(choice);
        entry.AddIfThere("worstPeriodMm", choice.Pattern?.Vector.PeriodMm);
        entry.AddIfThere("visibility", choice.Pattern?.Visibility);
        entry["visibilityAtWorst"] = choice.VisibilityAtWorst;
        return (JsonNode)entry;
    })]);
}
