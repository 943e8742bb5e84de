namespace Silkwright.Film.Measuring;

/// <summary>The components of the image, or of the gap.</summary>
/// <param name="Count">Components larger than a speck.</param>
/// <param name="Specks">Components of <see cref="FilmComponents.SpeckArea"/> px or less.</param>
/// <param name="Dots">Those that fit a box of <see cref="DotShape.LongestSide"/> px, from the top down.</param>
/// <param name="Crosses">Those of the image that are as large as a register mark and as empty, where the resolution is known.</param>
internal sealed record ComponentSet(long Count, long Specks, DotShape[] Dots, IReadOnlyList<Blob> Crosses);
