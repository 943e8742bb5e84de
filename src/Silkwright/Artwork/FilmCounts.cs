namespace Silkwright.Artwork;

/// <summary>How many there are in what prints and in the rest.</summary>
/// <param name="Image">Count in the image: what prints, black on a positive.</param>
/// <param name="Gap">Count in the gap: the rest.</param>
public sealed record FilmCounts(long Image, long Gap);
