using Silkwright.Artwork;
using Silkwright.Estimates;

namespace Silkwright.Plans;

/// <summary>Whether a mesh holds an artwork, and the spots that ask for more.</summary>
/// <param name="Holds">Everything on the film is within what the mesh can hold.</param>
/// <param name="SmallestLineUm">The finest line this mesh holds. [µm]</param>
/// <param name="SmallestDotUm">The smallest dot this mesh holds. [µm]</param>
/// <param name="Reason">In one sentence.</param>
/// <param name="TooFine">Places on the film that are finer.</param>
public sealed record DetailVerdict(
    bool Holds, Estimate SmallestLineUm, Estimate SmallestDotUm, string Reason, IReadOnlyList<FilmPlace> TooFine)
{
    /// <summary>With artwork that the mesh does not hold: the ways out, nearest first.</summary>
    public DetailRemedy? Remedy { get; init; }

    /// <summary>The coarser mesh that would do but for a few places.</summary>
    public CoarserMesh? Coarser { get; init; }
}
