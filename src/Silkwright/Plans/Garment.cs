namespace Silkwright.Plans;

/// <summary>What is printed on.</summary>
/// <param name="Colour">As one says it ("black", "natural").</param>
/// <param name="Knit">Kind of knit where known.</param>
/// <param name="Dark">Needs opacity: an underbase or a heavier deposit.</param>
public sealed record Garment(string? Colour = null, string? Knit = null, bool? Dark = null);
