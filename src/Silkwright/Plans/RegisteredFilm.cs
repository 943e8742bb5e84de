using Silkwright.Artwork;

namespace Silkwright.Plans;

/// <summary>How a film lies against another of its job by their register marks.</summary>
/// <param name="File">The film.</param>
/// <param name="Against">The film it is held against.</param>
/// <param name="Offset">How far apart their marks are.</param>
public sealed record RegisteredFilm(string File, string Against, RegisterOffset Offset);
