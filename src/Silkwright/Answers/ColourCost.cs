using Silkwright.Choosing;

namespace Silkwright.Answers;

/// <summary>
/// What one emulsion costs for one colour of one job, without what is thrown away: that depends on all the shop makes with it.
/// </summary>
/// <param name="Emulsion">Its id.</param>
/// <param name="Case">What it is worked out from, nothing thrown away.</param>
/// <param name="Cost">Expected cost of all its screens, spares included. [currency]</param>
/// <param name="WithoutEmulsion">The same with the emulsion for nothing. [currency]</param>
/// <param name="Grams">Emulsion on all of them and on those expected to be made again. [g]</param>
public sealed record ColourCost(string Emulsion, CostCase Case, double Cost, double WithoutEmulsion, double Grams);
