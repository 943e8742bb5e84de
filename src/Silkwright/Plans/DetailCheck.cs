using Silkwright.Artwork;
using Silkwright.Choosing;

namespace Silkwright.Plans;

/// <summary>Holds an artwork against a mesh, place by place.</summary>
internal static class DetailCheck
{
    public static DetailVerdict Of(MeshCandidate mesh, FilmMeasurement? film)
    {
        var line = mesh.Mesh.SmallestLineUm;
        var tooFine = (film?.FinestImage?.Places ?? [])
            .Where(place => place.WidthUm < line.Value)
            .OrderBy(place => place.WidthUm)
            .ToArray();
        return new DetailVerdict(mesh.Holds, line, mesh.Mesh.SmallestDotUm, mesh.Reason, tooFine);
    }
}
