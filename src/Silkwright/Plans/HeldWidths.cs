using Silkwright.Mesh;

namespace Silkwright.Plans;

/// <summary>What the parts of a film must not be narrower than: what the mesh prints whole or, for what must stay open in the stencil, what the stencil holds where that is wider.</summary>
/// <param name="LineUm">Narrowest line of the image. [µm]</param>
/// <param name="GapUm">Narrowest gap, a wall of stencil: light that creeps under the film widens walls, so the mesh alone decides. [µm]</param>
/// <param name="DotUm">Smallest dot of a halftone, as the diameter of a circle of its area. [µm]</param>
/// <param name="HoleUm">Smallest hole of a halftone, likewise. [µm]</param>
/// <param name="StencilUm">Finest that the stencil holds open at its exposure's aim; none where no exposure is known. [µm]</param>
public sealed record HeldWidths(double LineUm, double GapUm, double DotUm, double HoleUm, double? StencilUm)
{
    /// <summary>From the mesh (docs/engines/mesh.md, equation 7) and the stencil (docs/engines/exposure.md).</summary>
    /// <param name="lineUm">Smallest line the mesh prints whole. [µm]</param>
    /// <param name="dotUm">Smallest dot it holds. [µm]</param>
    /// <param name="stencilUm">Finest the stencil holds open; none where no exposure is known. [µm]</param>
    public static HeldWidths Of(double lineUm, double dotUm, double? stencilUm = null) =>
        new(Math.Max(lineUm, stencilUm ?? 0), lineUm, Math.Max(dotUm, stencilUm ?? 0), dotUm, stencilUm);

    /// <summary>Of a mesh alone.</summary>
    public static HeldWidths Of(WovenMesh mesh)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        return Of(mesh.SmallestLineUm.Value, mesh.SmallestDotUm.Value);
    }

    /// <summary>Of a colour's mesh and stencil.</summary>
    public static HeldWidths Of(ColourPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Of(plan.Detail.SmallestLineUm.Value, plan.Detail.SmallestDotUm.Value, plan.Exposure?.FinestHeldUm.Value);
    }

    /// <summary>Whether a width for what prints is the stencil's and not the mesh's. [µm]</summary>
    public bool IsStencils(double um) => um == StencilUm;
}
