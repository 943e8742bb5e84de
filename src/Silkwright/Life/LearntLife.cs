using Silkwright.Estimates;

namespace Silkwright.Life;

/// <summary>What a shop's counted stencils say of one emulsion in one ink.</summary>
/// <param name="Factor">Lives of sound stencils beside the trade's rule of thumb. [1], above 0.</param>
/// <param name="UnseenFault">Share of this shop's stencils with a fault of making that nobody saw. [0..1]</param>
/// <param name="Counted">Counted stencils of this emulsion in this ink.</param>
/// <param name="Broke">How many of those broke.</param>
/// <param name="Others">Counted stencils of other emulsions or in other inks: they speak of the shop alone.</param>
public sealed record LearntLife(Estimate Factor, Estimate UnseenFault, int Counted, int Broke, int Others);
