using Silkwright.Estimates;
using Silkwright.Mesh;

namespace Silkwright.Exposure;

/// <summary>How thick a stencil the light must go through.</summary>
public static class StencilThickness
{
    /// <param name="fabric">The mesh.</param>
    /// <param name="eomUm">Emulsion over mesh. [µm]</param>
    /// <returns>The fabric's thickness and the emulsion over it. [µm]</returns>
    public static Estimate Of(MeshFabric fabric, Estimate eomUm) => Propagation.Through(
        x => x[0] + x[1], [new("thickness of the fabric", WovenMesh.Of(fabric).FabricThicknessUm), new("emulsion over mesh", eomUm)]).Estimate;
}
