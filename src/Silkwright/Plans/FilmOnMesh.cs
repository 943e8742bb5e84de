using Silkwright.Artwork;
using Silkwright.Mesh;

namespace Silkwright.Plans;

/// <summary>What of a film is finer than a mesh can hold.</summary>
/// <param name="Mesh">The mesh.</param>
/// <param name="Lines">Narrow places of what prints, outside the halftones, finer than the mesh's smallest line.</param>
/// <param name="Gaps">Narrow places of the gap, outside the halftones: walls of stencil finer than that.</param>
/// <param name="MayBeMore">As many places were told as are ever told: there may be more.</param>
/// <param name="DotZones">Halftones whose smallest dot is finer than the mesh's smallest dot.</param>
/// <param name="HoleZones">Halftones whose smallest hole, an island of stencil, is finer than that.</param>
public sealed record FilmOnMesh(WovenMesh Mesh, int Lines, int Gaps, bool MayBeMore, int DotZones, int HoleZones)
{
    /// <summary>Counts what a mesh cannot hold. Its smallest line and dot: docs/engines/mesh.md.</summary>
    public static FilmOnMesh Of(FilmMeasurement film, WovenMesh mesh)
    {
        ArgumentNullException.ThrowIfNull(film);
        ArgumentNullException.ThrowIfNull(mesh);
        var (line, dot) = (mesh.SmallestLineUm.Value, mesh.SmallestDotUm.Value);
        var (lines, gaps) = (Finer(film.FinestImage, line), Finer(film.FinestGap, line));
        return new FilmOnMesh(
            mesh, lines, gaps, Math.Max(lines, gaps) >= FinestFeature.MostPlaces,
            film.Halftones.Count(zone => zone.SmallestDotUm < dot), film.Halftones.Count(zone => zone.SmallestHoleUm < dot));
    }

    private static int Finer(FinestFeature? finest, double um) => finest?.Places.Count(place => place.WidthUm < um) ?? 0;
}
