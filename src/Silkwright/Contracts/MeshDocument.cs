using System.Text.Json.Nodes;
using Silkwright.Mesh;

namespace Silkwright.Contracts;

/// <summary>The geometry of a mesh as other programs read it: silkwright/mesh/1, docs/schema/mesh.json.</summary>
public static class MeshDocument
{
    public static JsonObject Of(WovenMesh mesh) => new()
    {
        ["schema"] = "silkwright/mesh/1",
        ["countPerCm"] = mesh.Fabric.CountPerCm,
        ["threadUm"] = mesh.Fabric.ThreadUm,
        ["pitchUm"] = mesh.PitchUm,
        ["openingUm"] = mesh.OpeningUm,
        ["openAreaPercent"] = mesh.OpenAreaPercent,
        ["fabricThicknessUm"] = mesh.FabricThicknessUm.Value,
        ["inkVolumeCm3PerM2"] = mesh.InkVolumeCm3PerM2.Value,
        ["voidUm"] = mesh.VoidUm.Value,
        ["smallestDotUm"] = mesh.SmallestDotUm.Value,
        ["smallestLineUm"] = mesh.SmallestLineUm.Value,
        ["intervals"] = new JsonObject
        {
            ["fabricThicknessUm"] = DocumentJson.Of(mesh.FabricThicknessUm),
            ["inkVolumeCm3PerM2"] = DocumentJson.Of(mesh.InkVolumeCm3PerM2),
            ["voidUm"] = DocumentJson.Of(mesh.VoidUm),
            ["smallestDotUm"] = DocumentJson.Of(mesh.SmallestDotUm),
            ["smallestLineUm"] = DocumentJson.Of(mesh.SmallestLineUm),
        },
        ["notes"] = DocumentJson.Of(mesh.Notes),
    };
}
