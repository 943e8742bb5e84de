namespace Silkwright.Plans;

/// <summary>The films of one job held against each other.</summary>
public sealed record FilmsTogether(bool? SameSize, bool? SameDpi, bool? FitsFrame, IReadOnlyList<string> Remarks);
