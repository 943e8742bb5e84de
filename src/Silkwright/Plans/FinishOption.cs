using Silkwright.Choosing;
using Silkwright.Estimates;
using Silkwright.Life;

namespace Silkwright.Plans;

/// <summary>A way to finish the developed stencil, with its price.</summary>
/// <param name="Finish">Which.</param>
/// <param name="Cost">Expected cost of the colour's screens with it.</param>
/// <param name="FinishPercent">Chance that one such stencil finishes the run. [%]</param>
/// <param name="Spares">Spares that then pay.</param>
/// <param name="MeshLost">The stencil does not come off again: its mesh is paid for with it.</param>
public sealed record FinishOption(StencilFinish Finish, ScreenCost Cost, Estimate FinishPercent, int Spares, bool MeshLost);
