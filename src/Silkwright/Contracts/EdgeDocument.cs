using System.Text.Json.Nodes;
using Silkwright.Light;

namespace Silkwright.Contracts;

/// <summary>Light beside a film's edge as other programs read it: silkwright/light-edge/1, docs/schema/light-edge.json.</summary>
public static class EdgeDocument
{
    /// <summary>Nothing is told farther from the edge; what goes on there goes on evenly.</summary>
    private const double FarUm = 400;

    /// <summary>Steps told between two places of the profile: the finest ones beside the edge are thinned.</summary>
    private const double LeastStepUm = 0.5;

    /// <param name="answer">The answer.</param>
    /// <param name="seconds">How long it took. [s]</param>
    /// <param name="threads">How many threads followed photons.</param>
    public static JsonObject Of(EdgeAnswer answer, double seconds, int threads)
    {
        var (result, stencil) = (answer.Result, answer.Result.Case);
        var document = DocumentJson.Start("light-edge");
        document["image"] = Names.Of(stencil.Image.Kind);
        document.AddIfThere("widthUm", stencil.Image.Kind == FilmImageKind.Edge ? null : stencil.Image.WidthUm);
        document["stencilUm"] = stencil.StencilUm;
        document["lineSpreadUm"] = answer.LineSpreadUm.Value;
        document["undercutUm"] = answer.UndercutUm.Value;
        document["sawtoothUm"] = answer.SawtoothUm.Value;
        document["atShare"] = StencilShares.WellExposed;
        document["estimates"] = new JsonObject
        {
            ["lineSpreadUm"] = DocumentJson.Of(answer.LineSpreadUm),
            ["lineSpreadSqueegeeSideUm"] = DocumentJson.Of(answer.LineSpreadSqueegeeSideUm),
            ["undercutUm"] = DocumentJson.Of(answer.UndercutUm),
            ["farthestUm"] = DocumentJson.Of(answer.FarthestUm),
            ["sawtoothUm"] = DocumentJson.Of(answer.SawtoothUm),
            ["throughAverage"] = DocumentJson.Of(answer.ThroughAverage),
            ["throughWorst"] = DocumentJson.Of(answer.ThroughWorst),
        };
        document["drivers"] = new JsonArray([.. answer.Drivers.Select(driver => (JsonNode)new JsonObject { ["name"] = driver.Name, ["effectPercent"] = driver.EffectPercent })]);
        document["undercuts"] = new JsonArray([.. result.Undercuts.Select(undercut => (JsonNode)new JsonObject
        {
            ["share"] = undercut.Share,
            ["undercutUm"] = Of(undercut.UndercutUm),
            ["farthestUm"] = Of(undercut.FarthestUm),
            ["sawtoothUm"] = Of(undercut.SawtoothUm),
        })]);
        document["through"] = new JsonObject
        {
            ["average"] = Of(result.Through.Average),
            ["inOpenings"] = Of(result.Through.InOpenings),
            ["behindThreads"] = Of(result.Through.BehindThreads),
            ["worst"] = Of(result.Through.Worst),
        };
        document["clear"] = new JsonArray([.. result.DepthsUm.Zip(result.ClearDose, (depth, dose) => (JsonNode)new JsonObject
        {
            ["depthUm"] = depth, ["relativeDose"] = dose.Value, ["standardError"] = dose.StandardError,
        })]);
        document["profile"] = Profile(result);
        document["light"] = new JsonObject
        {
            ["back"] = Of(result.Back),
            ["backing"] = Of(result.Backing),
            ["coat"] = Of(result.Coat),
            ["threads"] = Of(result.Threads),
            ["roulette"] = result.Roulette,
        };
        document["photons"] = stencil.Photons;
        document["photonsPerSecond"] = seconds > 0 ? answer.PhotonsFollowed / seconds : answer.PhotonsFollowed;
        document["threads"] = threads;
        document["seed"] = stencil.Seed;
        document["instructionSet"] = SlabTransport.InstructionSet;
        document["cautions"] = DocumentJson.Of([LampCaution.BeforeExposing]);
        document["notes"] = DocumentJson.Of(answer.Asked.Notes);
        return document;
    }

    private static JsonObject Of(Sampled figure) => new() { ["value"] = figure.Value, ["standardError"] = figure.StandardError };

    private static JsonArray Profile(StencilResult result)
    {
        var profile = new JsonArray();
        for (var depth = 0; depth < result.DepthsUm.Count; depth += 2)
        {
            var last = double.NegativeInfinity;
            for (var i = 0; i < result.PlacesUm.Count; i++)
            {
                var x = result.PlacesUm[i];
                if (Math.Abs(x) > FarUm + result.Case.Image.WidthUm || x - last < LeastStepUm)
                    continue;
                last = x;
                var dose = result.Dose[depth][i];
                profile.Add(new JsonObject { ["xUm"] = x, ["depthUm"] = result.DepthsUm[depth], ["relativeDose"] = dose.Value, ["standardError"] = dose.StandardError });
            }
        }

        return profile;
    }
}
