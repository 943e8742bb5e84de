using System.Text.Json.Nodes;
using Silkwright.Light;

namespace Silkwright.Contracts;

/// <summary>Where light ends in layers, as other programs read it: silkwright/light-slab/1, docs/schema/light-slab.json.</summary>
public static class SlabDocument
{
    /// <param name="slab">The question.</param>
    /// <param name="result">The answer.</param>
    /// <param name="seconds">How long it took. [s]</param>
    /// <param name="threads">How many threads followed photons.</param>
    public static JsonObject Of(SlabCase slab, SlabResult result, double seconds, int threads) => new()
    {
        ["schema"] = "silkwright/light-slab/1",
        ["specularReflectance"] = result.SpecularReflectance,
        ["diffuseReflectance"] = result.DiffuseReflectance,
        ["totalTransmittance"] = result.TotalTransmittance,
        ["unscatteredTransmittance"] = result.UnscatteredTransmittance,
        ["absorbed"] = result.Absorbed,
        ["absorbedByLayer"] = new JsonArray([.. result.AbsorbedByLayer.Select(absorbed => (JsonNode)absorbed)]),
        ["roulette"] = result.Roulette,
        ["standardErrors"] = new JsonObject
        {
            ["diffuseReflectance"] = result.DiffuseReflectanceError,
            ["totalTransmittance"] = result.TotalTransmittanceError,
            ["unscatteredTransmittance"] = result.UnscatteredTransmittanceError,
            ["absorbed"] = result.AbsorbedError,
        },
        ["photons"] = result.Photons,
        ["photonsPerSecond"] = seconds > 0 ? result.Photons / seconds : result.Photons,
        ["threads"] = threads,
        ["seed"] = slab.Seed,
        ["instructionSet"] = SlabTransport.InstructionSet,
        ["notes"] = new JsonArray(),
    };
}
