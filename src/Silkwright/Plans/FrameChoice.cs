using Silkwright.Artwork;
using Silkwright.Mesh;

namespace Silkwright.Plans;

/// <summary>Which of the shop's frames carries a film on a mesh.</summary>
internal static class FrameChoice
{
    /// <summary>Free mesh beside the film on every side, for squeegee and flow-bar. Common practice, no source. [mm]</summary>
    public const double MarginMm = 75;

    /// <summary>The smallest frame with this mesh that the film fits; where none fits, the largest with this mesh.</summary>
    public static (Frame? Frame, bool? Fits) For(MeshFabric mesh, ArtworkNeeds needs, IReadOnlyList<Frame> frames)
    {
        var withMesh = frames
            .Where(frame => frame.Count > 0 && (frame.Mesh is null || (frame.Mesh.Name == mesh.Name && frame.Mesh.Dyed == mesh.Dyed)))
            .OrderBy(frame => frame.InsideWidthMm * frame.InsideHeightMm)
            .ToArray();
        if (withMesh.Length == 0)
            return (null, null);
        if (needs is not { FilmWidthMm: { } width, FilmHeightMm: { } height })
            return (withMesh[0], null);
        var fitting = withMesh.FirstOrDefault(frame =>
            frame.InsideWidthMm >= width + (2 * MarginMm) && frame.InsideHeightMm >= height + (2 * MarginMm));
        return fitting is null ? (withMesh[^1], false) : (fitting, true);
    }
}
