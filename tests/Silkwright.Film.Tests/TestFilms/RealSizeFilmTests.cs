using Silkwright.Film.Measuring;
using Silkwright.Film.TestFilms;

namespace Silkwright.Film.Tests.TestFilms;

/// <summary>Runs while nothing else does: what is allocated is counted over the whole process.</summary>
[CollectionDefinition("alone", DisableParallelization = true)]
public class Alone;

[Collection("alone")]
public class RealSizeFilmTests
{
    /// <summary>A real-size film, 14400 x 19200 px, read and measured. The bound is the packed film five times over (film, marks of specks, zones, two residues) and as much again.</summary>
    [Fact]
    public void A_film_of_real_size_is_measured_in_little_memory()
    {
        using var folder = new TestFolder();
        var recipe = FilmRecipeReader.Read(Path.Combine(Repository(), "demo", "artwork", "lantern-walk.json"))[3];
        FilmMaker.Draw(recipe, folder["a.tif"], null, CancellationToken.None);
        var before = GC.GetTotalAllocatedBytes(precise: true);
        var film = FilmMeasurer.Measure(folder["a.tif"], new FilmOptions(), null, TimeProvider.System, CancellationToken.None).Measurement;
        var packed = 14400L * 19200 / 8;
        Assert.InRange(GC.GetTotalAllocatedBytes(precise: true) - before, packed, 10 * packed);
        Assert.Equal((14400, 19200), (film.WidthPx, film.HeightPx));
        Assert.Equal([55.0], film.Halftones.Select(z => Math.Round(z.RulingLpi)).Distinct());
        Assert.All(film.Halftones, z => Assert.Equal(22.5, z.AngleDegrees, 0.2));
        Assert.InRange(film.CoveragePercent, 2, 35);
    }

    private static string Repository()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Silkwright.slnx")))
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("The repository's root is not above the tests.");
        return folder;
    }
}
