using Silkwright.Artwork;

namespace Silkwright.Film.Measuring;

/// <summary>What one reading of a film tells, without keeping it.</summary>
/// <param name="CoveragePercent">Share that prints. [%]</param>
/// <param name="Components">8-connected components larger than a speck.</param>
/// <param name="Specks">Those of 4 px or less.</param>
public sealed record FilmCount(double CoveragePercent, FilmCounts Components, FilmCounts Specks);
