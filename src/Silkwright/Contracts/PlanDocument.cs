using System.Text.Json.Nodes;
using Silkwright.Choosing;
using Silkwright.Drying;
using Silkwright.Estimates;
using Silkwright.Ink;
using Silkwright.Mesh;
using Silkwright.Plans;

namespace Silkwright.Contracts;

/// <summary>The plan as other programs read it: silkwright/plan/1, docs/schema/plan.json.</summary>
public static class PlanDocument
{
    public static JsonObject Of(StencilPlan plan)
    {
        var document = DocumentJson.Start("plan");
        document["name"] = plan.Job.Name;
        document["shop"] = plan.ShopName;
        document["currency"] = plan.Currency;
        document["colours"] = new JsonArray([.. plan.Colours.Select(Colour)]);
        var job = new JsonObject { ["screens"] = plan.Screens };
        job.AddIfThere("cost", Maybe(plan.Cost));
        job["minutes"] = DocumentJson.Of(plan.Minutes);
        document["job"] = job;
        document["films"] = FilmsTogetherDocument.Of(plan.Films);
        if (plan.MeasureNext is { } next)
        {
            var told = Measurement(next);
            told["others"] = new JsonArray([.. next.Others.Select(other => (JsonNode)Measurement(other))]);
            document["measureNext"] = told;
        }
        document["notes"] = DocumentJson.Of(plan.Notes);
        return document;
    }

    private static JsonObject Measurement(MeasureNext next) => new()
    {
        ["what"] = next.What,
        ["changes"] = next.Changes,
        ["minutes"] = next.Minutes,
        ["narrows"] = next.Narrows,
        ["narrowsPerMinute"] = next.NarrowsPerMinute,
        ["because"] = next.Because,
    };

    private static JsonObject Colour(ColourPlan plan)
    {
        var document = new JsonObject { ["name"] = plan.Colour.Name, ["ink"] = new JsonObject { ["kind"] = Names.Of(plan.Colour.Ink) } };
        document["role"] = Names.Of(plan.Colour.Role);
        document.AddIfThere("film", plan.Colour.Film?.File);
        document.AddIfThere("frame", FrameOf(plan.Frame));
        document["mesh"] = MeshOf(plan.Mesh);
        document["emulsion"] = plan.Emulsion?.ShelfId;
        document.AddIfThere("laidWith", plan.Emulsion?.LaidWith?.Id);
        document.AddIfThere("nearestFix", plan.NearestFix);
        document.AddIfThere("coat", CoatOf(plan));
        document.AddIfThere("drying", DryingOf(plan.Drying));
        document.AddIfThere("exposure", ExposureOf(plan));
        if (plan.Emulsion is not null)
        {
            document["finish"] = Names.Of(plan.Finish);
            document["finishes"] = FinishesDocument.Of(plan.Finishes);
        }

        document.AddIfThere("requiredFilmDensityUv", plan.Exposure?.RequiredFilmDensityUv);
        document["detail"] = DetailOf(plan);
        document.AddIfThere("moire", MoireOf(plan.Moire));
        AddInk(document["ink"]!.AsObject(), plan.Ink);
        document.AddIfThere("life", LifeOf(plan));
        document.AddIfThere("cost", CostOf(plan.Cost));
        document["cautions"] = DocumentJson.Of(plan.Cautions);
        document["because"] = DocumentJson.Of(plan.Because);
        document["beaten"] = new JsonArray([.. plan.Beaten.Select(BeatenOf)]);
        return document;
    }

    private static JsonObject? FrameOf(Frame? frame) => frame is null ? null : new JsonObject
    {
        ["insideWidthMm"] = frame.InsideWidthMm,
        ["insideHeightMm"] = frame.InsideHeightMm,
    };

    private static JsonObject MeshOf(WovenMesh mesh) => new()
    {
        ["countPerCm"] = mesh.Fabric.CountPerCm,
        ["threadUm"] = mesh.Fabric.ThreadUm,
        ["dyed"] = mesh.Fabric.Dyed,
        ["openingUm"] = mesh.OpeningUm,
        ["openAreaPercent"] = mesh.OpenAreaPercent,
        ["fabricThicknessUm"] = DocumentJson.Of(mesh.FabricThicknessUm),
        ["inkVolumeCm3PerM2"] = DocumentJson.Of(mesh.InkVolumeCm3PerM2),
    };

    private static JsonObject? CoatOf(ColourPlan plan) => plan.Coat is not { } coat ? null : new JsonObject
    {
        ["strokes"] = StrokeText.Write(coat.Strokes),
        ["trough"] = plan.Trough?.Id,
        ["eomUm"] = DocumentJson.Of(coat.EomUm),
        ["stencilUm"] = DocumentJson.Of(coat.StencilUm),
        ["wetUm"] = DocumentJson.Of(coat.WetUm),
        ["gramsPerM2"] = DocumentJson.Of(coat.GramsPerM2),
    };

    private static JsonObject? DryingOf(DryingResult? drying)
    {
        if (drying is null)
            return null;
        var document = new JsonObject { ["minutesToTouchDry"] = DocumentJson.Of(drying.MinutesToTouchDry) };
        document.AddIfThere("minutesToSafe", Maybe(drying.MinutesToSafe));
        document["sticks"] = new JsonObject { ["riskPercent"] = DocumentJson.Of(drying.StickRiskPercent), ["reason"] = drying.StickReason };
        return document;
    }

    private static JsonObject? ExposureOf(ColourPlan plan)
    {
        if (plan.Exposure is not { } window)
            return null;
        var document = new JsonObject { ["lamp"] = plan.Lamp?.Id };
        WindowDocument.Add(document, window);
        return document;
    }

    private static JsonObject? MoireOf(MoireVerdict? moire)
    {
        if (moire is null)
            return null;
        var document = MoireDocument.Of(moire.AsPlanned);
        document["angleAssumed"] = moire.AngleAssumed;
        document["sentence"] = moire.Sentence;
        document.AddIfThere("betterAngle", moire.Angle is { } angle ? MoireDocument.Of(angle) : null);
        document.AddIfThere("betterRuling", moire.Ruling is { } ruling ? MoireDocument.Of(ruling) : null);
        return document;
    }

    private static JsonObject DetailOf(ColourPlan plan)
    {
        var document = new JsonObject
        {
            ["holds"] = plan.Detail.Holds,
            ["reason"] = plan.Detail.Reason,
            ["smallestLineUm"] = DocumentJson.Of(plan.Detail.SmallestLineUm),
            ["smallestDotUm"] = DocumentJson.Of(plan.Detail.SmallestDotUm),
        };
        if (plan.Detail.Remedy is { } remedy)
            document["remedy"] = RemedyOf(remedy);
        if (plan.Detail.Coarser is { } coarser)
            document["coarser"] = new JsonObject { ["mesh"] = coarser.Mesh.Mesh.Fabric.Name, ["placesLost"] = coarser.Places, ["sentence"] = coarser.Sentence };
        document.AddIfThere("finestLineUm", Maybe(plan.Needs.FinestLineUm));
        document.AddIfThere("finestGapUm", Maybe(plan.Needs.FinestGapUm));
        document.AddIfThere("rulingLpi", Maybe(plan.Needs.RulingLpi));
        document.AddIfThere("smallestHalftoneDotUm", Maybe(plan.Needs.SmallestDotUm));
        document["coveragePercent"] = DocumentJson.Of(plan.Needs.CoveragePercent);
        document["tooFine"] = new JsonArray([.. plan.Detail.TooFine.Select(place => (JsonNode)new JsonObject
        {
            ["xMm"] = place.XMm,
            ["yMm"] = place.YMm,
            ["widthUm"] = place.WidthUm,
        })]);
        return document;
    }

    private static JsonObject RemedyOf(DetailRemedy remedy)
    {
        var document = new JsonObject { ["sentence"] = remedy.Sentence, ["placesLost"] = remedy.PlacesLost };
        document.AddIfThere("mesh", remedy.Mesh?.Name);
        document.AddIfThere("leastCountPerCm", remedy.LeastCountPerCm);
        document.AddIfThere("thickestThreadUm", remedy.ThickestThreadUm);
        document.AddIfThere("thickenToUm", Maybe(remedy.ThickenToUm));
        document.AddIfThere("finestRulingLpi", remedy.FinestRulingLpi);
        document.AddIfThere("lightestTonePercent", remedy.LightestTonePercent);
        return document;
    }

    private static void AddInk(JsonObject document, InkResult? ink)
    {
        if (ink is null)
            return;
        document["wetDepositUm"] = DocumentJson.Of(ink.WetDepositUm);
        document.AddIfThere("dryDepositUm", Maybe(ink.DryDepositUm));
        document["inkGrams"] = DocumentJson.Of(ink.InkGrams);
        document["gramsPerImpression"] = DocumentJson.Of(ink.GramsPerImpression);
    }

    private static JsonObject? LifeOf(ColourPlan plan) => plan is not { Life: { } life, Spares: { } spares } ? null : new JsonObject
    {
        ["finishPercent"] = DocumentJson.Of(life.FinishPercent),
        ["medianImpressions"] = DocumentJson.Of(life.MedianImpressions),
        ["expectedFailures"] = DocumentJson.Of(life.ExpectedFailures),
        ["spares"] = spares.Spares,
    };

    private static JsonObject? CostOf(ScreenCost? cost) => cost is null ? null : new JsonObject
    {
        ["total"] = DocumentJson.Of(cost.Total),
        ["emulsionOnScreen"] = DocumentJson.Of(cost.EmulsionOnScreen),
        ["labour"] = DocumentJson.Of(cost.Labour),
        ["waste"] = DocumentJson.Of(cost.Waste),
        ["remakes"] = DocumentJson.Of(cost.Remakes),
        ["drivers"] = DriversOf(cost.Drivers),
    };

    private static JsonObject BeatenOf(Beaten beaten)
    {
        var document = new JsonObject { ["emulsion"] = beaten.Emulsion.ShelfId, ["why"] = beaten.Why, ["ruledOut"] = beaten.RuledOut };
        document.AddIfThere("laidWith", beaten.Emulsion.LaidWith?.Id);
        document.AddIfThere("costDifference", Maybe(beaten.CostDifference));
        return document;
    }

    private static JsonArray DriversOf(IReadOnlyList<Driver> drivers) => new([.. drivers
        .Where(driver => driver.EffectPercent >= 1)
        .Select(driver => (JsonNode)new JsonObject { ["name"] = driver.Name, ["effectPercent"] = driver.EffectPercent })]);

    private static JsonObject? Maybe(Estimate? estimate) => estimate is null ? null : DocumentJson.Of(estimate);
}
