using Silkwright.Cli.Printing;
using Silkwright.Estimates;
using Silkwright.Film.Readers;
using Silkwright.Film.TestFilms;

namespace Silkwright.Cli;

/// <summary>The demonstration: an invented shop, its jobs, and the drawings its films are made from.</summary>
/// <param name="path">The folder with shop.json, jobs/ and artwork/.</param>
internal sealed class DemoFolder(string path)
{
    /// <summary>The folder's name where none is given.</summary>
    public const string Name = "demo";

    /// <summary>How many folders above the program are looked through for it.</summary>
    private const int LevelsUp = 8;

    public string Path { get; } = path;

    private bool IsThere => File.Exists(System.IO.Path.Combine(Path, "screens.json")) && Directory.Exists(System.IO.Path.Combine(Path, "artwork"));

    private string FilmsPath => System.IO.Path.Combine(Path, "films");

    /// <summary>The folder named, or the one here, or the one beside or above the program.</summary>
    /// <exception cref="InputProblemException">There is none, or something in it is no file.</exception>
    public static DemoFolder Find(string? named)
    {
        foreach (var candidate in named is null ? Candidates() : [named])
        {
            if (!File.Exists(System.IO.Path.Combine(candidate, "shop.json")))
                continue;
            foreach (var file in Directory.EnumerateFiles(candidate, "*", new EnumerationOptions { RecurseSubdirectories = true }))
                RegularFile.Require(file, file);
            return new DemoFolder(candidate);
        }

        throw new InputProblemException(new Problem("The demonstration is not here.", named ?? Name, "Name its folder, the one with shop.json, jobs and artwork."));
    }

    /// <summary>Draws those of the films that belong to a demonstration and are not there yet: its films are drawn, not kept.</summary>
    public static async Task DrawIfMissingAsync(IEnumerable<string> paths, Surroundings surroundings, CancellationToken cancel)
    {
        foreach (var missing in paths.Where(path => path.Length > 0).Select(System.IO.Path.GetFullPath).Where(path => !File.Exists(path)).GroupBy(path => System.IO.Path.GetDirectoryName(path)!))
        {
            var demo = new DemoFolder(System.IO.Path.GetDirectoryName(missing.Key) ?? missing.Key);
            if (missing.Key == demo.FilmsPath && demo.IsThere)
                _ = await demo.DrawMissingFilmsAsync(surroundings, cancel, missing.Select(path => System.IO.Path.GetFileName(path)).ToHashSet());
        }
    }

    /// <summary>Draws the films that are not there yet. Each gets its name only when it is whole.</summary>
    /// <param name="surroundings">Where progress goes.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <param name="only">File names; none: all films.</param>
    /// <returns>The films drawn now.</returns>
    /// <exception cref="InputProblemException">Nothing can be written there.</exception>
    public async Task<IReadOnlyList<string>> DrawMissingFilmsAsync(
        Surroundings surroundings, CancellationToken cancel, IReadOnlySet<string>? only = null)
    {
        var recipes = Directory.GetFiles(System.IO.Path.Combine(Path, "artwork"), "*.json").Order(StringComparer.Ordinal)
            .SelectMany(FilmRecipeReader.Read)
            .Where(recipe => only is null || only.Contains(recipe.File))
            .Where(recipe => !File.Exists(System.IO.Path.Combine(FilmsPath, recipe.File)))
            .ToArray();
        if (recipes.Length == 0)
            return [];
        try
        {
            return await DrawAsync(recipes, surroundings, cancel);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw new InputProblemException(new Problem(
                $"The demonstration's films can't be drawn: {failure.Message}", FilmsPath, "Copy the demonstration's folder to where there is room and you may write, and use it there."));
        }
    }

    private async Task<IReadOnlyList<string>> DrawAsync(FilmRecipe[] recipes, Surroundings surroundings, CancellationToken cancel)
    {
        Directory.CreateDirectory(FilmsPath);
        return await FilmWatch.RunAsync(surroundings, [.. recipes.Select(recipe => recipe.File)], "drawing", async progress =>
        {
            var atOnce = new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount, CancellationToken = cancel };
            await Parallel.ForEachAsync(Enumerable.Range(0, recipes.Length), atOnce, (i, stop) =>
            {
                Draw(recipes[i], progress[i], stop);
                return ValueTask.CompletedTask;
            });
            return recipes.Select(recipe => recipe.File).ToArray();
        });
    }

    private void Draw(FilmRecipe recipe, IProgress<double> progress, CancellationToken cancel)
    {
        var whole = System.IO.Path.Combine(FilmsPath, recipe.File);

        // Another run may draw the same film at the same time.
        var drawing = $"{whole}.{Guid.NewGuid():N}.drawing";
        try
        {
            FilmMaker.Draw(recipe, drawing, progress, cancel);
            File.Move(drawing, whole, overwrite: true);
        }
        finally
        {
            File.Delete(drawing);
        }
    }

    private static IEnumerable<string> Candidates()
    {
        yield return Name;
        var above = new DirectoryInfo(AppContext.BaseDirectory);
        for (var level = 0; level < LevelsUp && above is not null; level++, above = above.Parent)
            yield return System.IO.Path.Combine(above.FullName, Name);
    }
}
