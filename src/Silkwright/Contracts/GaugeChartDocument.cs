using System.Globalization;
using System.Text.Json.Nodes;
using Silkwright.Gauging;

namespace Silkwright.Contracts;

/// <summary>Control charts of emulsion over mesh as other programs read them: silkwright/gauge-chart/1, docs/schema/gauge-chart.json.</summary>
public static class GaugeChartDocument
{
    public static JsonObject Of(CoatHistory history)
    {
        var document = DocumentJson.Start("gauge-chart");
        document["says"] = DocumentJson.Of(Said(history));
        document["differences"] = new JsonArray([.. history.Differences.Select(difference => (JsonNode)Of(difference))]);
        document["charts"] = new JsonArray([.. history.Charts.Select(chart => (JsonNode)Of(chart))]);
        document["notes"] = DocumentJson.Of(history.Notes);
        return document;
    }

    /// <summary>What is worth telling, the plainest first.</summary>
    /// <param name="history">The charts.</param>
    /// <param name="inMil">Thickness in mil.</param>
    public static IReadOnlyList<string> Said(CoatHistory history, bool inMil = false) =>
    [
        .. history.Differences.Where(difference => difference.ChancePercent >= CoatChart.SurePercent && !IsOtherSide(difference, history)).Select(difference => CoatWords.Of(difference, inMil)),
        .. history.Charts.Select(chart => CoatWords.Of(chart, inMil)).OfType<string>(),
    ];

    /// <summary>Of two troughs, one thicker is the other thinner: the newer is told, or else the thicker.</summary>
    private static bool IsOtherSide(CoatDifference difference, CoatHistory history) =>
        history.Differences.Where(other => other.Grouping == difference.Grouping).ToArray() is [var one, var two]
        && (one == difference ? two : one) is var other && (other.Since is not null || (difference.Since is null && other.ThickerUm.Value > difference.ThickerUm.Value));

    private static JsonObject Of(CoatDifference difference)
    {
        var node = new JsonObject
        {
            ["group"] = Names.Of(difference.Grouping),
            ["name"] = difference.Name,
            ["thickerUm"] = DocumentJson.Of(difference.ThickerUm),
            ["chancePercent"] = difference.ChancePercent,
            ["readings"] = difference.Readings,
            ["notToldApartFrom"] = DocumentJson.Of(difference.AlsoIs),
            ["says"] = CoatWords.Of(difference),
        };
        node.AddIfThere("newSince", Day(difference.Since));
        return node;
    }

    private static JsonObject Of(CoatChart chart)
    {
        var node = new JsonObject
        {
            ["group"] = Names.Of(chart.Grouping),
            ["name"] = chart.Name,
            ["levelReadings"] = chart.LevelReadings,
            ["deviationUm"] = chart.DeviationUm,
            ["points"] = new JsonArray([.. chart.Readings.Select((reading, i) =>
            {
                var point = new JsonObject { ["on"] = Day(reading.On), ["eomUm"] = reading.EomUm, ["offUm"] = chart.OffUm[i] };
                if (i >= chart.LevelReadings)
                {
                    var average = chart.Points[i - chart.LevelReadings];
                    (point["averageUm"], point["lowUm"], point["highUm"], point["out"]) = (average.Average, average.Low, average.High, average.IsOut);
                }

                return (JsonNode)point;
            })]),
        };
        node.AddIfThere("signalOn", Day(chart.SignalOn));
        node.AddIfThere("since", Day(chart.Since));
        node.AddIfThere("changeUm", chart.ChangeUm is { } change ? DocumentJson.Of(change) : null);
        node.AddIfThere("chancePercent", chart.ChancePercent);
        node.AddIfThere("says", CoatWords.Of(chart));
        return node;
    }

    private static string? Day(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
