using Silkwright.Artwork;
using Silkwright.Estimates;
using Silkwright.Mesh;

namespace Silkwright.Choosing;

/// <summary>Which mesh for an artwork: what holds the detail first, then what lays the wanted ink.</summary>
public static class MeshChoice
{
    /// <summary>Fewest threads to a halftone line that anyone advises; below it moiré is next to certain. Common practice.</summary>
    public const double FewestThreadsPerLine = 2.5;

    /// <summary>Threads to a line that most shops hold to. Common practice (3.5 and 4 are heard most).</summary>
    public const double UsualThreadsPerLine = 3.5;

    /// <summary>Meshes held against the artwork, the best first.</summary>
    /// <param name="meshes">What the shop has; at least one.</param>
    /// <param name="needs">What the artwork asks for.</param>
    /// <param name="inkVolumeCm3PerM2">Ink wanted. [cm³/m²]</param>
    public static IReadOnlyList<MeshCandidate> Rank(IReadOnlyList<MeshFabric> meshes, ArtworkNeeds needs, double inkVolumeCm3PerM2) =>
        Rank([.. meshes.Select(WovenMesh.Of)], needs, inkVolumeCm3PerM2);

    private static IReadOnlyList<MeshCandidate> Rank(WovenMesh[] meshes, ArtworkNeeds needs, double wanted)
    {
        var decides = LineThatDecides(needs, meshes.Min(mesh => mesh.SmallestLineUm.Value));
        return [.. meshes
            .Select(mesh => Judge(mesh, needs, decides, wanted))
            .OrderBy(candidate => candidate.Holds ? 0 : 1)
            .ThenBy(candidate => Penalty(candidate))
            .ThenBy(candidate => candidate.Mesh.Fabric.Dyed ? 0 : 1)];
    }

    /// <summary>
    /// The finest line that some mesh holds: what is finer is lost on all of them, so it speaks for none. [µm]
    /// </summary>
    private static double? LineThatDecides(ArtworkNeeds needs, double finestHeldUm)
    {
        if (needs.FinestLineUm is not { } finest || finest.Value >= finestHeldUm)
            return needs.FinestLineUm?.Value;
        return needs.NarrowPlaces.Select(place => place.WidthUm).Where(width => width >= finestHeldUm).DefaultIfEmpty(finestHeldUm).Min();
    }

    private static MeshCandidate Judge(WovenMesh mesh, ArtworkNeeds needs, double? decidingLineUm, double wanted)
    {
        var lineShort = Short(mesh.SmallestLineUm.Value, needs.FinestLineUm?.Value);
        var decidingShort = Short(mesh.SmallestLineUm.Value, decidingLineUm);
        var dotShort = Short(mesh.SmallestDotUm.Value, needs.SmallestDotUm?.Value);
        double? threadsPerLine = needs.RulingLpi is { } ruling ? mesh.Fabric.CountPerCm * 2.54 / ruling.Value : null;
        var holds = lineShort <= 0 && dotShort <= 0 && threadsPerLine is not < FewestThreadsPerLine;
        var miss = Math.Abs(Math.Log(mesh.InkVolumeCm3PerM2.Value / wanted));
        return new MeshCandidate(mesh, holds, Math.Max(0, Math.Max(decidingShort, dotShort)), miss, threadsPerLine, Reason());

        string Reason()
        {
            var name = mesh.Fabric.Name;
            if (lineShort > 0)
                return $"{name} holds lines from {Figures.Length(mesh.SmallestLineUm)}; the artwork has {Figures.Length(needs.FinestLineUm!)}.";
            if (threadsPerLine is < FewestThreadsPerLine)
                return $"{name} has only {Figures.Plain(threadsPerLine.Value)} threads to a halftone line; moiré is next to certain below {Figures.Plain(FewestThreadsPerLine)}.";
            if (dotShort > 0)
            {
                var tone = Halftones.TonePercent(needs.RulingLpi!.Value, mesh.SmallestDotUm.Value);
                return $"{name} holds dots from {Figures.Length(mesh.SmallestDotUm)}; tones under {Figures.Plain(tone, 0)} % lose dots, the artwork goes down to {Figures.Length(needs.SmallestDotUm!)}.";
            }

            return $"{name} holds the finest detail and lays {Figures.Plain(mesh.InkVolumeCm3PerM2.Value, 0)} cm³/m² where about {Figures.Plain(wanted, 0)} is wanted.";
        }
    }

    private static double Penalty(MeshCandidate candidate)
    {
        var moire = candidate.ThreadsPerLine is { } threads ? Math.Max(0, Math.Log(UsualThreadsPerLine / threads)) : 0;
        return (2 * candidate.Shortfall) + candidate.DepositMiss + (2 * moire);
    }

    private static double Short(double held, double? needed) => needed is { } um ? Math.Log(held / um) : 0;
}
