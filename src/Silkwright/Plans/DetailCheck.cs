using Silkwright.Artwork;
using Silkwright.Choosing;
using Silkwright.Mesh;

namespace Silkwright.Plans;

/// <summary>Holds an artwork against the mesh taken, place by place, and finds the ways out.</summary>
internal static class DetailCheck
{
    /// <summary>No thinner thread is woven for printing garments. Common practice, no source. [µm]</summary>
    private const double ThinnestThreadUm = 27;

    /// <summary>A mesh must come this much nearer to the wanted ink to be worth telling, in ln of ink volume. Our own judgement. [1]</summary>
    private const double WorthTelling = 0.1;

    /// <param name="mesh">The mesh taken.</param>
    /// <param name="meshes">All of the shop, the best first.</param>
    /// <param name="carried">Those that some frame carries the film on.</param>
    /// <param name="needs">What the artwork asks for.</param>
    public static DetailVerdict Of(
        MeshCandidate mesh, IReadOnlyList<MeshCandidate> meshes, IReadOnlyList<MeshCandidate> carried, ArtworkNeeds needs)
    {
        var lost = FinerThan(mesh.Mesh.SmallestLineUm.Value, needs);
        return new DetailVerdict(mesh.Holds, mesh.Mesh.SmallestLineUm, mesh.Mesh.SmallestDotUm, mesh.Reason, lost)
        {
            Remedy = mesh.Holds ? null : RemedyFor(mesh, meshes, needs, lost.Length),
            Coarser = CoarserThan(mesh, carried, needs),
        };
    }

    private static DetailRemedy RemedyFor(MeshCandidate mesh, IReadOnlyList<MeshCandidate> meshes, ArtworkNeeds needs, int lost)
    {
        var dot = mesh.Mesh.SmallestDotUm.Value;
        var lineTooFine = needs.FinestLineUm?.Value < mesh.Mesh.SmallestLineUm.Value ? needs.FinestLineUm.Value : (double?)null;
        var holding = meshes.FirstOrDefault(other => other.Holds);
        double? finestRuling = mesh.ThreadsPerLine is < MeshChoice.FewestThreadsPerLine
            ? mesh.Mesh.Fabric.CountPerCm * 2.54 / MeshChoice.FewestThreadsPerLine
            : null;
        double? lightestTone = needs.SmallestDotUm?.Value < dot && needs.RulingLpi is { } ruling
            ? Halftones.TonePercent(ruling.Value, dot)
            : null;
        var wovenSoFine = holding is null && finestRuling is null && lightestTone is null
            && lineTooFine / WovenMesh.ThreadsPerSmallestLine >= ThinnestThreadUm;
        return new DetailRemedy
        {
            Mesh = holding?.Mesh.Fabric,
            LeastCountPerCm = wovenSoFine ? 10_000 / lineTooFine : null,
            ThickestThreadUm = wovenSoFine ? lineTooFine / WovenMesh.ThreadsPerSmallestLine : null,
            ThickenToUm = lineTooFine is null ? null : mesh.Mesh.SmallestLineUm,
            PlacesLost = lost,
            MayBeMore = lost >= FinestFeature.MostPlaces,
            FinestRulingLpi = finestRuling,
            LightestTonePercent = lightestTone,
        };
    }

    /// <summary>Of the meshes that lose only narrow places and come nearer to the wanted ink, the one that loses the fewest.</summary>
    private static CoarserMesh? CoarserThan(MeshCandidate mesh, IReadOnlyList<MeshCandidate> carried, ArtworkNeeds needs) => carried
        .Where(other => other.DepositMiss < mesh.DepositMiss - WorthTelling)
        .Where(other => other.ThreadsPerLine is not < MeshChoice.FewestThreadsPerLine)
        .Where(other => needs.SmallestDotUm is not { } dot || dot.Value >= other.Mesh.SmallestDotUm.Value)
        .Select(other => new CoarserMesh(other, FinerThan(other.Mesh.SmallestLineUm.Value, needs).Length))
        .Where(other => other.Places is > 0 and < FinestFeature.MostPlaces)
        .OrderBy(other => other.Places)
        .ThenBy(other => other.Mesh.DepositMiss)
        .FirstOrDefault();

    private static FilmPlace[] FinerThan(double um, ArtworkNeeds needs) =>
        [.. needs.NarrowPlaces.Where(place => place.WidthUm < um).OrderBy(place => place.WidthUm)];
}
