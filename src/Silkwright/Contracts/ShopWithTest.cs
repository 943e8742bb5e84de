using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Silkwright.Estimates;
using Silkwright.Exposure;
using Silkwright.Mesh;

namespace Silkwright.Contracts;

/// <summary>A shop's document with a step test added to its readings; everything else stays as it was.</summary>
public static class ShopWithTest
{
    private static readonly JsonDocumentOptions AsShopsAreRead = new() { AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip };

    /// <param name="shop">SHOP.json as it stands.</param>
    /// <param name="exposure">The case with its strips.</param>
    /// <param name="emulsionId">The shop's emulsion.</param>
    /// <param name="lampId">The shop's lamp.</param>
    /// <param name="mesh">The shop's mesh; none: the test counts for all.</param>
    /// <param name="batch">As typed; empty: not told.</param>
    /// <param name="lampHours">As typed; empty: not told. [h]</param>
    /// <returns>The document, which reads as a shop.</returns>
    /// <exception cref="InputProblemException">The hours are no number, or the document with the test does not read as a shop.</exception>
    public static string Add(string shop, ExposureCase exposure, string emulsionId, string lampId, MeshFabric? mesh, string batch, string lampHours)
    {
        double? hours = null;
        if (lampHours.Length > 0)
        {
            if (!double.TryParse(lampHours, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var told) || !double.IsFinite(told))
                throw new InputProblemException(new Problem("The lamp's hours are no number.", "lampHours", "Write the number alone, or leave it empty."));
            hours = told;
        }

        var document = JsonNode.Parse(shop, documentOptions: AsShopsAreRead)!.AsObject();
        var readings = document["readings"] as JsonObject ?? Put(document, "readings", new JsonObject());
        var tests = readings["exposure"] as JsonArray ?? Put(readings, "exposure", new JsonArray());
        foreach (var strip in exposure.Tests)
            tests.Add((JsonNode)StripOf(strip));
        var text = document.ToJsonString(DocumentJson.Options);
        _ = ShopReader.Read(text, "shop document");
        return text;

        JsonObject StripOf(StepTest strip)
        {
            var entry = new JsonObject
            {
                ["emulsion"] = emulsionId,
                ["lamp"] = lampId,
                [exposure.Lamp.Counts == ExposureCount.Units ? "units" : "seconds"] = strip.Amount,
            };
            entry.AddIfThere("mesh", mesh is null ? null : new JsonObject { ["countPerCm"] = mesh.CountPerCm, ["threadUm"] = mesh.ThreadUm, ["dyed"] = mesh.Dyed });
            entry.AddIfThere("solidStep", strip.SolidStep);
            entry.AddIfThere("squeegeeSideSoft", strip.SqueegeeSideSoft);
            entry.AddIfThere("finestLineUm", strip.FinestLineUm);
            entry.AddIfThere("finestGapUm", strip.FinestGapUm);
            entry.AddIfThere("damp", strip.Damp ? true : null);
            entry.AddIfThere("on", strip.On?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
            entry.AddIfThere("lampHours", hours ?? strip.LampHours);
            entry.AddIfThere("batch", batch.Length > 0 ? batch : strip.Batch);
            return entry;
        }
    }

    private static T Put<T>(JsonObject into, string name, T node)
        where T : JsonNode
    {
        into[name] = node;
        return node;
    }
}
