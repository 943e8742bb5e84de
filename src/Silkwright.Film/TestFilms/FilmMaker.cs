using Silkwright.Film.Readers;

namespace Silkwright.Film.TestFilms;

/// <summary>Draws films from recipes, a strip at a time.</summary>
public static class FilmMaker
{
    /// <summary>Draws one film as a 1-bit TIFF with CCITT G4 compression.</summary>
    /// <param name="recipe">What to draw.</param>
    /// <param name="path">File to write; replaced if it is there.</param>
    /// <param name="progress">Told the share done, 0 to 1.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="IOException">The file cannot be written.</exception>
    /// <exception cref="Silkwright.Estimates.InputProblemException">The drawing is larger than a film may be.</exception>
    public static void Draw(FilmRecipe recipe, string path, IProgress<double>? progress, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        FilmProblems.CheckSize(recipe.File, recipe.WidthPx, recipe.HeightPx);
        using var painter = new StripPainter(recipe);
        FilmTiffWriter.Write(path, recipe.WidthPx, recipe.HeightPx, recipe.Dpi, (top, rows, strip) =>
        {
            cancel.ThrowIfCancellationRequested();
            painter.Paint(top, rows, strip);
            progress?.Report((double)(top + rows) / recipe.HeightPx);
        });
    }

    /// <summary>Draws every film of a recipe file into a folder, two at a time.</summary>
    /// <returns>The files, in the recipe's order.</returns>
    /// <exception cref="Silkwright.Estimates.InputProblemException">The recipe has faults.</exception>
    public static IReadOnlyList<string> DrawAll(string recipePath, string folder, IProgress<double>? progress, CancellationToken cancel)
    {
        var recipes = FilmRecipeReader.Read(recipePath);
        _ = Directory.CreateDirectory(folder);
        var done = 0;
        _ = Parallel.ForEach(recipes, new ParallelOptions { CancellationToken = cancel }, recipe =>
        {
            Draw(recipe, Path.Combine(folder, recipe.File), null, cancel);
            progress?.Report((double)Interlocked.Increment(ref done) / recipes.Count);
        });
        return [.. recipes.Select(r => Path.Combine(folder, r.File))];
    }

    /// <summary>Draws one film in memory, for films small enough.</summary>
    internal static PackedBitmap Bits(FilmRecipe recipe)
    {
        var bits = new PackedBitmap(recipe.WidthPx, recipe.HeightPx);
        using var painter = new StripPainter(recipe);
        painter.Paint(0, bits.Height, bits);
        return bits;
    }
}
