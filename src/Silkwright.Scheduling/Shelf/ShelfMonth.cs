namespace Silkwright.Scheduling.Shelf;

/// <summary>The chosen shelf in one of the months that may come.</summary>
/// <param name="Name">The scenario's name.</param>
/// <param name="WeightPercent">How likely, of all scenarios. [%]</param>
/// <param name="MonthlyCost">What that month costs, fixed and switching costs in it. [money/month]</param>
/// <param name="Assignments">Emulsion by job.</param>
public sealed record ShelfMonth(string Name, double WeightPercent, double MonthlyCost, IReadOnlyDictionary<string, string> Assignments);
