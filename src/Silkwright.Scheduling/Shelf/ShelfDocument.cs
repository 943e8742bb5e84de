using System.Text.Json.Nodes;
using Silkwright.Contracts;
using Silkwright.Estimates;

namespace Silkwright.Scheduling.Shelf;

/// <summary>The answer of <c>shelf</c> for programs: docs/schema/shelf.json.</summary>
public static class ShelfDocument
{
    public static JsonObject Of(ShelfAnswer answer)
    {
        var document = DocumentJson.Start("shelf");
        document["keep"] = DocumentJson.Of(answer.Keep);
        document["assignments"] = Assignments(answer.Assignments);
        document["uses"] = new JsonArray([.. answer.Uses.Select(Use)]);
        document["monthlyCost"] = answer.MonthlyCost;
        document.AddIfThere("currency", answer.Currency);
        document["fixedCostPerMonth"] = answer.FixedCostPerMonth;
        document["runningCostPerMonth"] = answer.RunningCostPerMonth;
        document["switchingCostPerMonth"] = answer.SwitchingCostPerMonth;
        document["bound"] = answer.Bound;
        document["gapPercent"] = answer.GapPercent;
        document["seconds"] = answer.Seconds;
        document.AddIfThere("secondBest", Other(answer.SecondBest));
        document.AddIfThere("oneMore", Other(answer.OneMore));
        document.AddIfThere("oneFewer", Other(answer.OneFewer));
        document.AddIfThere("change", Change(answer.Change));
        document.AddIfThere("doubt", Doubt(answer.Doubt));
        if (answer.Months.Count > 0)
            document["months"] = new JsonArray([.. answer.Months.Select(Month)]);
        document["notes"] = DocumentJson.Of(answer.Notes);
        return document;
    }

    private static JsonObject Assignments(IReadOnlyDictionary<string, string> assignments) =>
        new(assignments.Select(pair => KeyValuePair.Create(pair.Key, (JsonNode?)pair.Value)));

    private static JsonObject Use(ShelfUse use)
    {
        var document = new JsonObject
        {
            ["emulsion"] = use.Emulsion,
            ["jobs"] = use.Jobs,
            ["screensPerMonth"] = use.ScreensPerMonth,
            ["fixedCostPerMonth"] = use.FixedCostPerMonth,
            ["runningCostPerMonth"] = use.RunningCostPerMonth,
        };
        document.AddIfThere("container", Size(use.Size));
        return document;
    }

    private static JsonObject? Size(ShelfSize? size)
    {
        if (size is null)
            return null;
        var document = new JsonObject { ["grams"] = size.Grams, ["price"] = size.Price };
        if (size is { NextGrams: { } grams, NextExtra: { } extra })
            document["next"] = new JsonObject { ["grams"] = grams, ["extra"] = extra };
        return document;
    }

    private static JsonObject? Other(OtherShelf? other)
    {
        if (other is null)
            return null;
        var document = new JsonObject
        {
            ["keep"] = DocumentJson.Of(other.Keep),
            ["monthlyCost"] = other.MonthlyCost,
            ["extra"] = other.Extra,
            ["bound"] = other.Bound,
        };
        if (other.Containers.Count > 0)
            document["containers"] = new JsonObject(other.Containers.Select(pair => KeyValuePair.Create(pair.Key, (JsonNode?)pair.Value)));
        return document;
    }

    private static JsonObject? Change(ShelfChange? change)
    {
        if (change is null)
            return null;
        var document = new JsonObject { ["drop"] = DocumentJson.Of(change.Drop), ["try"] = DocumentJson.Of(change.Try) };
        document.AddIfThere("todayMonthlyCost", change.TodayMonthlyCost);
        document.AddIfThere("savesPerMonth", change.SavesPerMonth);
        if (change.Resize.Count > 0)
        {
            document["resize"] = new JsonArray([.. change.Resize.Select(resize =>
                new JsonObject { ["emulsion"] = resize.Emulsion, ["fromGrams"] = resize.FromGrams, ["toGrams"] = resize.ToGrams })]);
        }

        return document;
    }

    private static JsonObject? Doubt(ShelfDoubt? doubt)
    {
        if (doubt is null)
            return null;
        var document = new JsonObject { ["monthlyCost"] = DocumentJson.Of(doubt.MonthlyCost), ["chanceCheapestPercent"] = doubt.ChanceCheapestPercent };
        Add("secondBestExtra", doubt.SecondBest);
        Add("oneMoreExtra", doubt.OneMore);
        Add("oneFewerExtra", doubt.OneFewer);
        Add("savesPerMonth", doubt.SavesPerMonth);
        return document;

        void Add(string name, Estimate? extra) => document.AddIfThere(name, extra is null ? null : DocumentJson.Of(extra));
    }

    private static JsonObject Month(ShelfMonth month) => new()
    {
        ["name"] = month.Name,
        ["weightPercent"] = month.WeightPercent,
        ["monthlyCost"] = month.MonthlyCost,
        ["assignments"] = Assignments(month.Assignments),
    };
}
