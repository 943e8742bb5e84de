using System.Text.Json.Nodes;
using Silkwright.Mesh;

namespace Silkwright.Contracts;

/// <summary>The geometry of a mesh as other programs read it: silkwright/mesh/1.</summary>
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
            ["fabricThicknessUm"] = EstimateDocument.Of(mesh.FabricThicknessUm),
            ["inkVolumeCm3PerM2"] = EstimateDocument.Of(mesh.InkVolumeCm3PerM2),
            ["voidUm"] = EstimateDocument.Of(mesh.VoidUm),
            ["smallestDotUm"] = EstimateDocument.Of(mesh.SmallestDotUm),
            ["smallestLineUm"] = EstimateDocument.Of(mesh.SmallestLineUm),
        },
        ["notes"] = NoteDocument.Of(mesh.Notes),
    };
}
