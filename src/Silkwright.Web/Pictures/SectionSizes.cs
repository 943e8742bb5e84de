using Silkwright.Estimates;
using Silkwright.Plans;

namespace Silkwright.Web.Pictures;

/// <summary>What a cross-section of a screen is drawn from. [µm]</summary>
/// <param name="PitchUm">Thread to thread.</param>
/// <param name="ThreadUm">Thread diameter.</param>
/// <param name="FabricUm">Thickness of the fabric.</param>
/// <param name="Eom">Emulsion over mesh; none before an emulsion is chosen: bare mesh is drawn.</param>
/// <param name="OpeningUm">Width of the finest printed line; none: the stencil's edge alone.</param>
/// <param name="Deposit">Wet ink on the garment.</param>
public sealed record SectionSizes(
    double PitchUm, double ThreadUm, double FabricUm, Estimate? Eom, double? OpeningUm, Estimate? Deposit)
{
    public static SectionSizes Of(ColourPlan plan) => new(
        plan.Mesh.PitchUm,
        plan.Mesh.Fabric.ThreadUm,
        plan.Mesh.FabricThicknessUm.Value,
        plan.Coat?.EomUm,
        plan.Needs.FinestLineUm?.Value ?? plan.Needs.SmallestDotUm?.Value,
        plan.Ink?.WetDepositUm);
}
