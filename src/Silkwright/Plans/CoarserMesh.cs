using Silkwright.Choosing;
using Silkwright.Estimates;

namespace Silkwright.Plans;

/// <summary>What the finest places of an artwork cost: without them this mesh, which lays more nearly the ink that is wanted, would do.</summary>
/// <param name="Mesh">The coarser mesh.</param>
/// <param name="Places">Places on the film that it loses.</param>
public sealed record CoarserMesh(MeshCandidate Mesh, int Places)
{
    public string Sentence =>
        $"Without the {Places} {(Places == 1 ? "place" : "places")} finer than {Figures.Length(Mesh.Mesh.SmallestLineUm)}, {Mesh.Mesh.Fabric.Name} would do and lay {Figures.Plain(Mesh.Mesh.InkVolumeCm3PerM2.Value, 0)} cm³/m².";
}
