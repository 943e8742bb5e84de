namespace Silkwright.Coating.Learning;

/// <summary>What reading one coat now would bring.</summary>
/// <param name="Case">Which of the coats asked about it is, from 0.</param>
/// <param name="ShrinksUm">By how much the 90 % intervals of all those coats shrink, added up. [µm]</param>
/// <param name="PerMinuteUm">The same by minute of measuring. [µm/min]</param>
/// <param name="Narrowed">Each coat's interval before and after, its half width. [µm]</param>
public sealed record ReadingWorth(int Case, double ShrinksUm, double PerMinuteUm, IReadOnlyList<(double BeforeUm, double AfterUm)> Narrowed);
