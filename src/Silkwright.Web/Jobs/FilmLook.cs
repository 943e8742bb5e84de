using Silkwright.Estimates;

namespace Silkwright.Web.Jobs;

/// <summary>The spot of a film that a person looks at.</summary>
/// <param name="X">As it stands in the address: from the film's left.</param>
/// <param name="Y">From its top.</param>
/// <param name="Spot">What is there; none where the spot cannot be had.</param>
/// <param name="Problems">Why not.</param>
public sealed record FilmLook(string X, string Y, Artwork.FilmSpot? Spot, IReadOnlyList<Problem> Problems)
{
    /// <summary>No spot is looked at.</summary>
    public static FilmLook None { get; } = new("", "", null, []);
}
