using System.Globalization;
using System.Text.Json.Nodes;
using Silkwright.Estimates;
using Silkwright.Exposure;

namespace Silkwright.Contracts;

/// <summary>A shop's step tests day by day, as other programs read them: silkwright/expose-drift/1, docs/schema/expose-drift.json.</summary>
public static class DriftDocument
{
    /// <param name="histories">Each emulsion, lamp and mesh that has tests.</param>
    public static JsonObject Of(IReadOnlyList<(ExposureCase Case, ExposureDrift Drift)> histories)
    {
        var document = DocumentJson.Start("expose-drift");
        document["histories"] = new JsonArray([.. histories.Select(history =>
        {
            var part = new JsonObject
            {
                ["emulsion"] = history.Case.Emulsion.Id,
                ["lamp"] = history.Case.Lamp.Id,
                ["mesh"] = new JsonObject { ["countPerCm"] = history.Case.Mesh.CountPerCm, ["threadUm"] = history.Case.Mesh.ThreadUm, ["dyed"] = history.Case.Mesh.Dyed },
            };
            foreach (var (name, node) in Part(history.Drift).ToArray())
                part[name] = node?.DeepClone();
            return (JsonNode)part;
        })]);
        return document;
    }

    internal static JsonObject Part(ExposureDrift drift)
    {
        var suffix = drift.Counts == ExposureCount.Seconds ? "Seconds" : "Units";
        var document = new JsonObject
        {
            ["drifted"] = drift.HasDrifted,
            ["says"] = Says(drift),
            ["levelTests"] = drift.LevelTests,
            ["tests"] = new JsonArray([.. drift.Tests.Select(test =>
            {
                var entry = new JsonObject { ["on"] = Day(test.On), [$"least{suffix}"] = DocumentJson.Of(test.Least), ["percentOff"] = test.PercentOff };
                entry.AddIfThere("averagePercent", test.AveragePercent);
                entry.AddIfThere("lowPercent", test.LowPercent);
                entry.AddIfThere("highPercent", test.HighPercent);
                return (JsonNode)entry;
            })]),
        };
        document.AddIfThere("signalOn", drift.SignalOn is { } signal ? Day(signal) : null);
        document.AddIfThere("since", drift.Since is { } since ? Day(since) : null);
        document.AddIfThere("changePercent", drift.ChangePercent is { } change ? DocumentJson.Of(change) : null);
        document.AddIfThere("chancePercent", drift.ChancePercent);
        document["because"] = DocumentJson.Of(drift.Because);
        document["notes"] = DocumentJson.Of(drift.Notes);
        return document;
    }

    /// <summary>The history in one sentence.</summary>
    public static string Says(ExposureDrift drift)
    {
        if (drift is not { ChangePercent: { } change, Since: { } since, ChancePercent: { } chance })
            return "Too few dated tests to tell a drift.";
        if (!drift.HasDrifted && chance < AsLikelyAsNot)
            return string.Create(CultureInfo.InvariantCulture, $"No drift to be seen in {drift.Tests.Count} tests (chance of one {chance:0} %).");
        var way = change.Value >= 0 ? "more" : "less";
        var (near, far) = change.Value >= 0 ? (change.Low, change.High) : (-change.High, -change.Low);
        var sure = drift.HasDrifted ? "sure that it has changed" : "sure that it has changed, which is not sure enough: one test more will tell";
        return string.Create(CultureInfo.InvariantCulture, $"Through-cure asks about {Math.Abs(change.Value):0} % {way} light ({near:0} to {far:0} %) since {Figures.Day(since)}; {Math.Min(chance, 99):0} % {sure}.");
    }

    private const double AsLikelyAsNot = 50;

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
