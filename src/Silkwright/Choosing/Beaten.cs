using Silkwright.Emulsion;
using Silkwright.Estimates;

namespace Silkwright.Choosing;

/// <summary>An emulsion that lost.</summary>
/// <param name="Emulsion">Which.</param>
/// <param name="Why">In one sentence.</param>
/// <param name="RuledOut">A hard limit forbids it; cost does not come into it.</param>
/// <param name="CostDifference">How much dearer it is expected to be; none when ruled out. [currency]</param>
/// <param name="Cost">Its own cost, part by part; none when ruled out.</param>
public sealed record Beaten(
    StencilEmulsion Emulsion, string Why, bool RuledOut, Estimate? CostDifference = null, ScreenCost? Cost = null);
