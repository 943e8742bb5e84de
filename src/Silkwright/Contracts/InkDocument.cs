using System.Text.Json.Nodes;
using Silkwright.Ink;

namespace Silkwright.Contracts;

/// <summary>Ink laid and used as other programs read it: silkwright/ink/1, docs/schema/ink.json.</summary>
public static class InkDocument
{
    public static JsonObject Of(InkResult ink)
    {
        var document = DocumentJson.Start("ink");
        document["wetDepositUm"] = DocumentJson.Of(ink.WetDepositUm);
        document.AddIfThere("dryDepositUm", ink.DryDepositUm is { } dry ? DocumentJson.Of(dry) : null);
        document["inkGrams"] = DocumentJson.Of(ink.InkGrams);
        document["gramsPerImpression"] = DocumentJson.Of(ink.GramsPerImpression);
        document["notes"] = DocumentJson.Of(ink.Notes);
        return document;
    }
}
