using Silkwright.Artwork;

namespace Silkwright.Film.Measuring;

/// <summary>A film's measurement and how fast it was made.</summary>
/// <param name="Measurement">What the film demands.</param>
/// <param name="MegapixelsPerSecond">Film area over the time it took. [Mpx/s]</param>
public sealed record FilmReading(FilmMeasurement Measurement, double MegapixelsPerSecond);
