using System.Text.Json.Nodes;
using Silkwright.Gauging;

namespace Silkwright.Contracts;

/// <summary>A gauge study as other programs read it: silkwright/gauge-study/1, docs/schema/gauge-study.json.</summary>
public static class GaugeStudyDocument
{
    public static JsonObject Of(GaugeStudyAnswer answer)
    {
        var study = answer.Study;
        var document = DocumentJson.Start("gauge-study");
        document["kind"] = answer.Kind;
        document["readings"] = study.Readings.Count;
        document["parts"] = study.Readings.Select(reading => reading.Part).Distinct().Count();
        document["operators"] = study.Readings.Select(reading => reading.Operator).Distinct().Count();
        document["method"] = Names.Of(study.Method);
        Add(document, study.Figures);
        document.AddIfThere("anova", study.Anova is { } anova ? Of(anova) : null);
        document.AddIfThere("byLikelihood", study.Reml is { } reml ? Of(reml) : null);
        document.AddIfThere("byAverageAndRange", study.Range is { } range ? Of(range) : null);
        document["outliers"] = new JsonArray([.. study.Outliers.Select(outlier => (JsonNode)new JsonObject
        {
            ["line"] = outlier.Reading.Line,
            ["part"] = outlier.Reading.Part,
            ["operator"] = outlier.Reading.Operator,
            ["valueUm"] = outlier.Reading.ValueUm,
            ["offUm"] = outlier.OffUm,
            ["studentised"] = outlier.Studentised,
            ["chance"] = outlier.Chance,
        })]);
        if (study.WithoutOutliers is { } without)
        {
            var figures = new JsonObject();
            Add(figures, without);
            document["withoutOutliers"] = figures;
        }

        if (study.Needed is { } needed)
        {
            var node = new JsonObject { ["wantedUm"] = needed.WantedUm };
            node.AddIfThere("oneHand", needed.OneHand);
            node.AddIfThere("oneHandAtWorst", needed.OneHandAtWorst);
            node.AddIfThere("hands", needed.Hands);
            document["readingsNeeded"] = node;
        }

        document["pairs"] = new JsonArray([.. answer.Pairs.Select(pair =>
        {
            var node = new JsonObject { ["screen"] = pair.Screen, ["eomUm"] = pair.Pairing.EomUm };
            node.AddIfThere("standardErrorUm", pair.Pairing.StandardErrorUm);
            node.AddIfThere("degreesOfFreedom", pair.Pairing.StandardErrorUm is null ? null : pair.Pairing.Freedom);
            node["placesPaired"] = pair.Pairing.Pairs;
            return (JsonNode)node;
        })]);
        GaugeReadDocument.Add(document, answer.File);
        document["notes"] = DocumentJson.Of([.. study.Notes, .. answer.File.Notes]);
        return document;
    }

    private static void Add(JsonObject document, StudyFigures figures)
    {
        document["repeatabilityUm"] = DocumentJson.Of(figures.RepeatabilityUm);
        document["operatorUm"] = DocumentJson.Of(figures.OperatorUm);
        document.AddIfThere("interactionUm", figures.InteractionUm is { } interaction ? DocumentJson.Of(interaction) : null);
        document["reproducibilityUm"] = DocumentJson.Of(figures.ReproducibilityUm);
        document["gaugeUm"] = DocumentJson.Of(figures.GaugeUm);
        document["partUm"] = DocumentJson.Of(figures.PartUm);
        document["totalUm"] = DocumentJson.Of(figures.TotalUm);
        document.AddIfThere("gaugePercent", figures.GaugePercent is { } percent ? DocumentJson.Of(percent) : null);
        document.AddIfThere("classes", figures.Classes is { } classes ? DocumentJson.Of(classes) : null);
        document.AddIfThere("distinctClasses", figures.Variances.DistinctClasses);
    }

    private static JsonObject Of(VarianceParts parts)
    {
        var node = new JsonObject
        {
            ["repeatabilityUm"] = Math.Sqrt(parts.Repeatability),
            ["operatorUm"] = Math.Sqrt(parts.Operator),
            ["interactionUm"] = Math.Sqrt(parts.Interaction),
            ["gaugeUm"] = Math.Sqrt(parts.Gauge),
            ["partUm"] = Math.Sqrt(parts.Part),
            ["totalUm"] = Math.Sqrt(parts.Total),
        };
        node.AddIfThere("distinctClasses", parts.DistinctClasses);
        return node;
    }

    private static JsonObject Of(CrossedAnova anova)
    {
        var node = new JsonObject { ["part"] = Of(anova.Part), ["operator"] = Of(anova.Operator) };
        node.AddIfThere("interaction", anova.Interaction is { } interaction ? Of(interaction) : null);
        node["error"] = Of(anova.Error);
        node["interactionPooled"] = anova.IsPooled;
        return node;
    }

    private static JsonObject Of(AnovaRow row)
    {
        var node = new JsonObject { ["sumOfSquares"] = row.SumOfSquares, ["degreesOfFreedom"] = row.Freedom, ["meanSquare"] = row.MeanSquare };
        node.AddIfThere("f", row.F);
        node.AddIfThere("p", row.P);
        return node;
    }
}
