using System.Text.Json.Nodes;
using Silkwright.Answers;
using Silkwright.Choosing;

namespace Silkwright.Contracts;

/// <summary>Which emulsion, as other programs read it: silkwright/choose/1, docs/schema/choose.json.</summary>
public static class EmulsionAnswerDocument
{
    public static JsonObject Of(EmulsionAnswer answer)
    {
        var document = DocumentJson.Start("choose");
        document["currency"] = answer.Currency;
        document["ink"] = Names.Of(answer.Plan.Colour.Ink);
        document["run"] = answer.Job.Run;
        document["emulsion"] = answer.Plan.Emulsion?.Id;
        document.AddIfThere("laidWith", answer.Plan.Emulsion?.LaidWith?.Id);
        document.AddIfThere("nearestFix", answer.Plan.NearestFix);
        document["because"] = DocumentJson.Of(answer.Plan.Because);
        document["candidates"] = new JsonArray([.. answer.Contenders.Select((contender, i) => Candidate(contender, i, answer))]);
        document["ruledOut"] = new JsonArray([.. answer.Plan.Beaten.Where(beaten => beaten.RuledOut).Select(beaten =>
            (JsonNode)new JsonObject { ["emulsion"] = beaten.Emulsion.Id, ["why"] = beaten.Why })]);
        if (answer.Comparison is { } comparison)
            AddComparison(document, comparison);
        document["turns"] = new JsonArray([.. answer.Curves.Select(Curve)]);
        document["facts"] = DocumentJson.Of(answer.Facts);
        document["notReckoned"] = DocumentJson.Of(answer.NotReckoned);
        document["stopIf"] = DocumentJson.Of(answer.StopIf);
        document["measureFirst"] = DocumentJson.Of(answer.MeasureFirst);
        document["cautions"] = DocumentJson.Of(answer.Plan.Cautions);
        document["notes"] = DocumentJson.Of(answer.Assumed);
        return document;
    }

    private static JsonObject Candidate(Contender contender, int index, EmulsionAnswer answer)
    {
        var standing = answer.Comparison!.Standings.First(s => s.Id == contender.Id);
        var handling = answer.Handling[index];
        var document = new JsonObject
        {
            ["emulsion"] = contender.Id,
            ["cost"] = Cost(contender.Cost),
            ["costDifference"] = DocumentJson.Of(standing.Difference),
            ["cheapestPercent"] = standing.ChanceBestPercent,
            ["meanRegret"] = standing.MeanRegret,
            ["worstRegret"] = standing.WorstRegret,
            ["finish"] = Names.Of(handling.Finish),
            ["exposuresRightPercent"] = handling.Forgiveness.RightPercent,
        };
        document.AddIfThere("laidWith", handling.LaidWith);
        document["finishes"] = FinishesDocument.Of(handling.Finishes);
        if (handling.SeeThrough is { } seeThrough)
            document["seeThrough"] = seeThrough;
        document.AddIfThere("secondsEitherSide", handling.Forgiveness.SecondsEitherSide);
        document.AddIfThere("roomLightMinutes", handling.RoomLightMinutes is { } minutes ? DocumentJson.Of(minutes) : null);
        document.AddIfThere("why", answer.Plan.Beaten.FirstOrDefault(beaten => beaten.Emulsion.Id == contender.Id)?.Why);
        return document;
    }

    /// <summary>A cost with its parts, in the order of the work.</summary>
    private static JsonObject Cost(ScreenCost cost) => new()
    {
        ["total"] = DocumentJson.Of(cost.Total),
        ["emulsionOnScreen"] = DocumentJson.Of(cost.EmulsionOnScreen),
        ["coating"] = DocumentJson.Of(cost.Coating),
        ["drying"] = DocumentJson.Of(cost.Drying),
        ["exposing"] = DocumentJson.Of(cost.Exposing),
        ["making"] = DocumentJson.Of(cost.Making),
        ["finish"] = DocumentJson.Of(cost.Finish),
        ["reclaim"] = DocumentJson.Of(cost.Reclaim),
        ["waste"] = DocumentJson.Of(cost.Waste),
        ["remakes"] = DocumentJson.Of(cost.Remakes),
    };

    private static void AddComparison(JsonObject document, Comparison comparison)
    {
        document["close"] = comparison.IsClose;
        document["robust"] = comparison.Robust;
        if (comparison.Settles is not { } settles)
            return;
        var known = new JsonObject { ["amount"] = Names.Of(settles.Input), ["regretNow"] = settles.RegretNow, ["regretKnown"] = settles.RegretKnown };
        known.AddIfThere("emulsion", settles.Of);
        document["settles"] = known;
    }

    private static JsonObject Curve(CostCurve curve)
    {
        var document = new JsonObject
        {
            ["axis"] = Names.Of(curve.Axis),
            ["asked"] = curve.Asked,
            ["values"] = new JsonArray([.. curve.Values.Select(value => (JsonNode)value)]),
            ["costs"] = new JsonArray([.. curve.Costs.Select(cost => (JsonNode)new JsonObject
            {
                ["emulsion"] = cost.Key,
                ["costs"] = new JsonArray([.. cost.Value.Select(value => value is { } known ? (JsonNode?)known : null)]),
            })]),
        };
        document["turns"] = new JsonArray([.. curve.Turns.Select(turn =>
        {
            var at = new JsonObject { ["at"] = turn.At };
            at.AddIfThere("below", turn.Below);
            at.AddIfThere("above", turn.Above);
            return (JsonNode)at;
        })]);
        return document;
    }
}
