using System.Text.Json.Nodes;
using Silkwright.Exposure;

namespace Silkwright.Contracts;

/// <summary>A step test read, as other programs read it: silkwright/expose-test/1, docs/schema/expose-test.json.</summary>
public static class StepTestDocument
{
    public static JsonObject Of(StepTestReading reading)
    {
        var window = reading.Window;
        var name = window.Counts == ExposureCount.Seconds ? "seconds" : "units";
        var document = WindowDocument.Of((reading.Case, window));
        document["schema"] = "silkwright/expose-test/1";
        var next = new JsonObject();
        next.AddIfThere(name, reading.Next.Amount);
        next["why"] = reading.Next.Why;
        document["nextStrip"] = next;
        if (reading.Curve is { } fit)
        {
            document["workingCurve"] = new JsonObject
            {
                ["penetrationDepthUm"] = fit.Curve.PenetrationDepthUm,
                [$"critical{char.ToUpperInvariant(name[0])}{name[1..]}"] = fit.Curve.CriticalDoseMjPerCm2,
                ["standardErrors"] = new JsonObject { ["penetrationDepthUm"] = fit.PenetrationDepthStandardErrorUm, [$"critical{char.ToUpperInvariant(name[0])}{name[1..]}"] = fit.CriticalDoseStandardErrorMjPerCm2 },
                ["weights"] = new JsonArray([.. fit.Weights.Select(weight => (JsonNode)weight)]),
            };
        }

        document.AddIfThere("history", reading.History is { } history ? DriftDocument.Part(history) : null);
        return document;
    }
}
