using Silkwright.Emulsion;
using Silkwright.Mesh;

namespace Silkwright.Choosing;

/// <summary>How much emulsion over mesh a purpose wants.</summary>
/// <remarks>Common practice with trade articles behind the spot-colour and underbase figures: docs/engines/choosing.md, table 2.</remarks>
public static class CoatTarget
{
    private const double FineMeshFromPerCm = 100;

    /// <summary>Wanted emulsion over mesh. [µm]</summary>
    public static double EomUm(WovenMesh mesh, InkKind ink, bool underbase, bool halftone) =>
        mesh.FabricThicknessUm.Value * ShareOfFabric(mesh.Fabric.CountPerCm, ink, underbase, halftone);

    private static double ShareOfFabric(double countPerCm, InkKind ink, bool underbase, bool halftone) => (ink, underbase, halftone) switch
    {
        (_, _, true) when countPerCm >= FineMeshFromPerCm => 0.11,
        (_, _, true) => 0.14,
        (InkKind.WaterBased or InkKind.Discharge, _, _) => 0.12,
        (_, true, _) => 0.20,
        (InkKind.Solvent or InkKind.Uv, _, _) => 0.12,
        _ => 0.15,
    };
}
