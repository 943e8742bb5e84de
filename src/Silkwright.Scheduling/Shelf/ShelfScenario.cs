namespace Silkwright.Scheduling.Shelf;

/// <summary>A month that may come: the shelf is chosen before it is known, jobs are put on emulsions after.</summary>
/// <param name="Name">For people.</param>
/// <param name="Weight">How likely, against the other months; weights need not add to 1. Above 0.</param>
/// <param name="ScreensPerMonth">Screens by job; a job not named keeps its own figure. [screens/month], 0 or more.</param>
public sealed record ShelfScenario(string Name, double Weight, IReadOnlyDictionary<string, double> ScreensPerMonth);
