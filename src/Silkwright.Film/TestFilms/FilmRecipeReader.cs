using System.Text.Json;
using Silkwright.Estimates;
using Silkwright.Film.Readers;

namespace Silkwright.Film.TestFilms;

/// <summary>Reads film drawings from JSON; every fault of the file is told at once. The fields: docs/engines/film.md, "Drawings".</summary>
public static class FilmRecipeReader
{
    private const string Remedy = "See docs/engines/film.md, \"Drawings\".";

    /// <summary>Reads the films of a drawing file.</summary>
    /// <exception cref="InputProblemException">The file cannot be read or has faults.</exception>
    public static IReadOnlyList<FilmRecipe> Read(string path)
    {
        var name = Path.GetFileName(path);
        try
        {
            return Parse(File.ReadAllText(path), name);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw FilmProblems.Unreadable(name, failure);
        }
    }

    /// <summary>Reads the films of a drawing.</summary>
    /// <param name="json">The drawing.</param>
    /// <param name="name">What to call it in problems.</param>
    /// <exception cref="InputProblemException">The drawing has faults.</exception>
    public static IReadOnlyList<FilmRecipe> Parse(string json, string name)
    {
        JsonDocument document;
        try
        {
            document = JsonDocument.Parse(json, new JsonDocumentOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true });
        }
        catch (JsonException failure)
        {
            throw new InputProblemException(
                new Problem("The drawing is not JSON.", $"{name}, line {failure.LineNumber + 1}", "Put the marks in order there."));
        }

        using (document)
        {
            var problems = new ProblemList();
            var shapes = new ShapeReader(problems);
            var root = new JsonFields(document.RootElement, name, problems);
            var (width, height, dpi) = (root.Number("widthMm"), root.Number("heightMm"), root.Number("dpi"));
            if (width is <= 0 || height is <= 0 || dpi is < FilmLimits.LeastDpi or > FilmLimits.MostDpi)
                problems.Add("The size or resolution is not a film's.", name, "widthMm and heightMm are above 0; dpi is 50 to 20000.");
            foreach (var (part, element) in root.Members("parts"))
                shapes.AddPart(part, element, $"{name}, part {part}");
            var films = new List<FilmRecipe>();
            foreach (var (element, i) in root.Items("films").Select((e, i) => (e, i)))
            {
                var film = new JsonFields(element, $"{name}, film {i + 1}", problems);
                var file = film.Text("file");
                if (file is not null && (file.Length == 0 || Path.GetFileName(file) != file))
                    problems.Add("A film's file is a name without a folder.", film.Where, Remedy);
                var drawn = film.Items("shapes").SelectMany((s, k) => shapes.Read(s, $"{name}, film {i + 1}, shape {k + 1}")).ToList();
                films.Add(new FilmRecipe(file ?? string.Empty, width ?? 0, height ?? 0, dpi ?? 0, drawn));
                film.RefuseOthers(Remedy);
            }

            _ = root.Text("name", required: false);
            _ = root.Text("note", required: false);
            root.RefuseOthers(Remedy);
            if (films.Count == 0)
                problems.Add("The drawing has no films.", name, Remedy);
            problems.ThrowIfAny();
            return films;
        }
    }
}
