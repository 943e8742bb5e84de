using System.Text;
using Silkwright.Estimates;
using Silkwright.Film.Measuring;
using Silkwright.Film.Pictures;
using Silkwright.Mesh;
using Silkwright.Plans;

namespace Silkwright.Cli.Commands.Film;

/// <summary>The picture of a film against a mesh: what <c>film --picture</c> asks for, and draws.</summary>
/// <param name="Path">Where it goes.</param>
/// <param name="Mesh">The mesh it is held against.</param>
internal sealed record FilmPicture(string Path, WovenMesh Mesh)
{
    /// <summary>Longest side drawn. [px]</summary>
    private const int LongestPx = 2000;

    /// <summary>None where no picture is asked for.</summary>
    /// <exception cref="InputProblemException">A picture of several films, without a mesh, of a kind that is not drawn, or where nothing can be written: told before anybody waits for the measuring.</exception>
    public static FilmPicture? Of(string? path, WovenMesh? mesh, IReadOnlyList<string> films)
    {
        if (path is null)
            return null;
        _ = OutputFile.PictureKind(path);
        var problems = new ProblemList();
        if (films.Count > 1)
            problems.Add("A picture shows one film, and several are named.", "--picture", "Draw them one by one.");
        if (mesh is null)
            problems.Add("A picture holds the film against a mesh, and --mesh is missing.", "--mesh", "Add it, for example --mesh 61/cm,64um.");
        problems.ThrowIfAny();
        OutputFile.RefuseInput(path, films[0], "--picture");
        OutputFile.Try(path);
        return new FilmPicture(path, mesh!);
    }

    public async Task DrawAsync(string film, FilmOptions options, CancellationToken cancel)
    {
        var heat = await Task.Run(() => FilmHeat.Of(film, options, HeldWidths.Of(Mesh), LongestPx, HeatColours.Day, cancel), cancel);
        var bytes = OutputFile.PictureKind(Path) == "png" ? heat.Png : Encoding.UTF8.GetBytes(heat.Svg(Mesh.Fabric.Name, HeatColours.Day));
        await OutputFile.WriteAsync(Path, bytes, cancel);
    }
}
