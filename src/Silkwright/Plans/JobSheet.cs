using Silkwright.Artwork;

namespace Silkwright.Plans;

/// <summary>A film of a job with what is known of its colour.</summary>
/// <param name="Film">The film.</param>
/// <param name="IsUnderbase">It prints under the others, and so may hold the same image as one of them.</param>
/// <param name="Frame">The frame its screen is to have; none where none is known.</param>
internal sealed record JobSheet(FilmMeasurement Film, bool IsUnderbase, Frame? Frame);
