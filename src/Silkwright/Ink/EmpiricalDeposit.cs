using Silkwright.Mesh;

namespace Silkwright.Ink;

/// <summary>
/// A published rule for the wet deposit that was fitted to prints, beside the theoretical ink volume. The two disagree; they
/// are shown side by side and never merged.
/// </summary>
public static class EmpiricalDeposit
{
    private const double CoarseUpToPerCm = 42;
    private const double FineFromPerCm = 140;

    /// <summary>Wet deposit of a plain weave by the rule. [µm]</summary>
    /// <remarks>
    /// docs/engines/ink.md, equation 5: up to 42 threads a centimetre 1.82·d·(1−n·d)², then 0.285 of the fabric's thickness,
    /// from 140 on 0.35 of it. Source: Trade magazine article on ink consumption, 2000, table 1 and figure 1.
    /// </remarks>
    public static double WetUm(WovenMesh mesh)
    {
        var count = mesh.Fabric.CountPerCm;
        if (count <= CoarseUpToPerCm)
            return 1.82 * mesh.Fabric.ThreadUm * mesh.OpenAreaPercent / 100;
        return (count < FineFromPerCm ? 0.285 : 0.35) * mesh.FabricThicknessUm.Value;
    }
}
