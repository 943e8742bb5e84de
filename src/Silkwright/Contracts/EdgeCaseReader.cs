using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Light;
using Silkwright.Mesh;

namespace Silkwright.Contracts;

/// <summary>
/// Reads a CASE of <c>light edge</c>: <c>mesh {countPerCm, threadUm, dyed, fabricThicknessUm, angleDegrees}</c>, <c>emulsion {family, printSideUm, squeegeeSideUm, n, muaPerCm, musPerCm, g}</c>,
/// <c>lamp {kind, halfAngleDegrees | distanceMm, sourceMm | pitchMm, slantDegrees}</c>, <c>filmBaseUm</c>, <c>imageAgainstCoat</c>, <c>filmIndex</c>, <c>gapUm</c>, <c>backing {reflectance}</c>,
/// <c>image {kind, widthUm}</c>, <c>photons</c>, <c>seed</c>. Only the mesh is needed.
/// </summary>
public static class EdgeCaseReader
{
    private const double UmPerCm = 10_000;

    /// <param name="json">The document.</param>
    /// <param name="where">Its name, for faults.</param>
    /// <exception cref="InputProblemException">The document has faults; carries all of them.</exception>
    public static EdgeAsked Read(string json, string where)
    {
        var problems = new ProblemList();
        var root = DocumentField.Root(json, where, problems);
        problems.ThrowIfAny();
        var (mesh, coat) = (root["mesh"], root["emulsion"]);
        var parts = new EdgeParts
        {
            Mesh = ReadMesh(mesh, problems),
            MeshAngleDegrees = Of(mesh["angleDegrees"], EdgeQuestion.MeshAngle) ?? 0,
            Family = coat["family"].Choice<EmulsionFamily>(),
            PrintSideUm = Of(coat["printSideUm"], EdgeQuestion.PrintSide),
            SqueegeeSideUm = Of(coat["squeegeeSideUm"], EdgeQuestion.SqueegeeSide),
            CoatIndex = Of(coat["n"], EdgeQuestion.Index),
            CoatAbsorptionPerCm = Of(coat["muaPerCm"], EdgeQuestion.Absorption),
            CoatScatteringPerCm = Of(coat["musPerCm"], EdgeQuestion.Scattering),
            CoatAnisotropy = Of(coat["g"], EdgeQuestion.Anisotropy),
            Lamp = ReadLamp(root["lamp"], problems),
            FilmIndex = Of(root["filmIndex"], EdgeQuestion.FilmIndex),
            CarrierUm = ReadFilm(root["filmBaseUm"], root["imageAgainstCoat"].YesNo() ?? true),
            GapUm = Of(root["gapUm"], EdgeQuestion.Gap),
            BackingReflectance = root["backing"]["reflectance"].Number("1", 0, 1),
            Image = ReadImage(root["image"]),
            Photons = root["photons"].IsThere ? root["photons"].RequiredCount((long)EdgeQuestion.Photons.Least, (long)EdgeQuestion.MostPhotons) : (long)EdgeQuestion.UsualPhotons,
            Seed = (ulong)(root["seed"].IsThere ? root["seed"].RequiredCount(0, int.MaxValue) : 1),
        };
        root.RefuseSlips();
        problems.ThrowIfAny();
        return parts.Asked();
    }

    private static double? Of(DocumentField field, QuantityField like) => field.Number(like.Kind.KeptIn.Length > 0 ? like.Kind.KeptIn : "1", Math.Max(like.Least, like.Above), like.Most);

    /// <summary>Film that lies with its image on the coat is above the image and out of the way.</summary>
    private static double ReadFilm(DocumentField film, bool imageAgainstCoat)
    {
        var thickness = Of(film, EdgeQuestion.FilmBetween);
        if (imageAgainstCoat)
            return 0;
        if (thickness is null)
            film.Missing("the film's thickness [um], which lies between image and coat");
        return thickness ?? 0;
    }

    private static MeshFabric ReadMesh(DocumentField mesh, ProblemList problems)
    {
        var count = mesh["countPerCm"].RequiredNumber("1/cm", InputLimits.LeastCountPerCm, InputLimits.MostCountPerCm);
        var thread = mesh["threadUm"].RequiredNumber("um", InputLimits.LeastThreadUm, InputLimits.MostThreadUm);
        var thickness = mesh["fabricThicknessUm"].Number("um", InputLimits.LeastFabricUm, InputLimits.MostFabricUm);
        if (count * thread >= UmPerCm)
            problems.Add("At this count the threads would overlap: no opening is left.", mesh["threadUm"].Path, "Check the count and the diameter.");
        if (thickness < thread)
            problems.Add("The fabric would be thinner than its thread.", mesh["fabricThicknessUm"].Path, "Measure it again, or leave it out.");
        return new MeshFabric(count, thread, mesh["dyed"].YesNo() ?? false) { FabricThicknessUm = thickness };
    }

    private static LampLight? ReadLamp(DocumentField lamp, ProblemList problems)
    {
        if (!lamp.IsThere)
            return null;
        var light = EdgeLamp.Of(
            lamp["kind"].RequiredChoice<LampShape>(), Of(lamp["halfAngleDegrees"], EdgeQuestion.HalfAngle), Of(lamp["distanceMm"], EdgeQuestion.Distance),
            Of(lamp["sourceMm"], EdgeQuestion.Source), Of(lamp["pitchMm"], EdgeQuestion.Pitch)) with { SlantDegrees = Of(lamp["slantDegrees"], EdgeQuestion.Slant) ?? 0 };
        foreach (var needs in new[] { lamp["sourceMm"], lamp["pitchMm"] }.Where(field => field.IsThere && !lamp["distanceMm"].IsThere))
            problems.Add("This says an angle only with the lamp's distance.", needs.Path, "Add distanceMm.");
        if (!light.IsAboveGlass)
            problems.Add("The lamp's light would come from below the glass.", lamp.Path, "Give a smaller slant or a smaller half angle.");
        return light;
    }

    private static FilmImage ReadImage(DocumentField image)
    {
        var kind = image["kind"].Choice<FilmImageKind>() ?? FilmImageKind.Edge;
        return kind == FilmImageKind.Edge ? FilmImage.Edge : new FilmImage(kind, image["widthUm"].RequiredNumber("um", 1e-3, 10_000));
    }
}
