namespace Silkwright.Answers;

/// <summary>What one emulsion costs for one colour of one job, without what is thrown away: that depends on all the shop makes with it.</summary>
/// <param name="Emulsion">Its id.</param>
/// <param name="Screens">Screens made for the colour, spares included.</param>
/// <param name="Cost">Expected cost of all of them. [currency]</param>
/// <param name="Grams">Emulsion on all of them. [g]</param>
public sealed record ColourCost(string Emulsion, int Screens, double Cost, double Grams);
