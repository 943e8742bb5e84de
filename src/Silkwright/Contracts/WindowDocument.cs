using System.Text.Json.Nodes;
using Silkwright.Exposure;

namespace Silkwright.Contracts;

/// <summary>An exposure window as other programs read it: silkwright/expose-window/1, docs/schema/expose-window.json.</summary>
public static class WindowDocument
{
    public static JsonObject Of((ExposureCase Case, ExposureWindow Window) answer)
    {
        var document = DocumentJson.Start("expose-window");
        Add(document, answer.Window);
        document["requiredFilmDensityUv"] = answer.Window.RequiredFilmDensityUv;
        document.AddIfThere("solidStepAtAim", answer.Window.SolidStepAtAim);
        document["ground"] = Names.Of(answer.Window.Least.Ground);
        document["cautions"] = DocumentJson.Of([LampCaution.BeforeExposing]);
        document["notes"] = DocumentJson.Of(answer.Window.Notes);
        return document;
    }

    /// <summary>Least, aim, most, how wide and on what it rests.</summary>
    internal static void Add(JsonObject document, ExposureWindow window)
    {
        var suffix = window.Counts == ExposureCount.Seconds ? "Seconds" : "Units";
        document[$"least{suffix}"] = DocumentJson.Of(window.Least);
        document.AddIfThere($"aim{suffix}", window.Aim is { } aim ? DocumentJson.Of(aim) : null);
        document["openChancePercent"] = window.OpenChancePercent;
        document.AddIfThere("aimChancePercent", window.AimChancePercent);
        document.AddIfThere("middleChancePercent", window.MiddleChancePercent);
        document.AddIfThere("aimBecause", window.AimBecause);
        document[$"most{suffix}"] = DocumentJson.Of(window.Most);
        document["latitudeStops"] = window.LatitudeStops;
        document["latitudeSteps"] = window.LatitudeSteps;
        document["finestHeldUm"] = DocumentJson.Of(window.FinestHeldUm);
        document["drivers"] = new JsonArray([.. window.Drivers.Select(driver => (JsonNode)new JsonObject { ["name"] = driver.Name, ["effectPercent"] = driver.EffectPercent })]);
        if (window.OpensBy.Count > 0)
            document["opensBy"] = DocumentJson.Of(window.OpensBy);
    }
}
