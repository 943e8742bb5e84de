namespace Silkwright.Scheduling.Shelf;

/// <summary>The size that a kept emulsion is bought in.</summary>
/// <param name="Grams">[g]</param>
/// <param name="Price">What one costs. [money]</param>
/// <param name="NextGrams">The next best size; none where it is sold in one only. [g]</param>
/// <param name="NextExtra">What the next best size costs more, the same jobs made out of it; below 0 never, unless the choice is unproven. [money/month]</param>
public sealed record ShelfSize(double Grams, double Price, double? NextGrams, double? NextExtra);
