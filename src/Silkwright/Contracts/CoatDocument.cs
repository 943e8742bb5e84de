using System.Text.Json.Nodes;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>Predicted coats as other programs read them: silkwright/coat-predict/1, docs/schema/coat-predict.json.</summary>
public static class CoatDocument
{
    public static JsonObject Of(CoatAnswer answer)
    {
        var document = DocumentJson.Start("coat-predict");
        document["cases"] = new JsonArray([.. answer.Cases.Select(Case)]);
        document["effects"] = new JsonArray([.. answer.Effects.Select(effect => (JsonNode)new JsonObject
        {
            ["group"] = effect.Group,
            ["name"] = effect.Name,
            ["eomUm"] = effect.EomUm,
            ["standardErrorUm"] = effect.StandardErrorUm,
            ["readings"] = effect.Readings,
        }.With("rawUm", effect.RawUm))]);
        document["held"] = new JsonArray([.. answer.Held.Select(held => (JsonNode)new JsonObject
        {
            ["line"] = held.Row.Line,
            ["eomUm"] = held.Row.EomUm,
            ["expectedUm"] = held.Expected.Value,
            ["low90Um"] = held.Expected.Low,
            ["high90Um"] = held.Expected.High,
        })]);
        if (answer.RepeatabilityUm is { } repeats)
            document["gauge"] = Gauge(repeats);
        document["readings"] = new JsonObject { ["given"] = answer.Given, ["learntFrom"] = answer.Used };
        document["flagged"] = Flagged(answer.Flags);
        document["notes"] = DocumentJson.Of(answer.Notes);
        return document;
    }

    internal static JsonObject Gauge(Estimate repeats) => new()
    {
        ["repeatabilityUm"] = repeats.Value,
        ["low90Um"] = repeats.Low,
        ["high90Um"] = repeats.High,
    };

    internal static JsonArray Flagged(IEnumerable<CoatFlag> flags) => new([.. flags.Select(flag => (JsonNode)new JsonObject
    {
        ["line"] = flag.Line,
        ["column"] = flag.Column,
        ["what"] = flag.What,
        ["remedy"] = flag.Remedy,
        ["learntFrom"] = flag.Used,
    })]);

    private static JsonNode Case((CoatRow Row, Estimate EomUm, Estimate MeanUm) one) => new JsonObject
    {
        ["line"] = one.Row.Line,
        ["eomUm"] = one.EomUm.Value,
        ["low90Um"] = one.EomUm.Low,
        ["high90Um"] = one.EomUm.High,
        ["ground"] = Names.Of(one.EomUm.Ground),
        ["mean"] = DocumentJson.Of(one.MeanUm),
    };
}
