using Silkwright.Artwork;

namespace Silkwright.Plans;

/// <summary>Two films of one job that look like a mistake.</summary>
/// <param name="First">A film.</param>
/// <param name="Second">Another.</param>
/// <param name="Resemblance">What they have to do with each other.</param>
public sealed record FilmPair(string First, string Second, FilmResemblance Resemblance);
