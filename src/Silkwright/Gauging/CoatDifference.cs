using Silkwright.Estimates;

namespace Silkwright.Gauging;

/// <summary>How one operator, trough or emulsion lot coats against the others, on the same recipes.</summary>
/// <param name="Grouping">What is held against the others.</param>
/// <param name="Name">Its name.</param>
/// <param name="ThickerUm">Its readings less the others'. [µm]</param>
/// <param name="ChancePercent">Chance that there is a difference at all. [%]</param>
/// <param name="Readings">Its readings on those recipes.</param>
/// <param name="Since">Its first day, where the others were read before it came: it is new.</param>
/// <param name="AlsoIs">What else is only found with it: the difference may be that's.</param>
public sealed record CoatDifference(ChartGrouping Grouping, string Name, Estimate ThickerUm, double ChancePercent, int Readings, DateOnly? Since, IReadOnlyList<string> AlsoIs);
