using Silkwright.Estimates;
using Silkwright.Film.Measuring;
using Silkwright.Film.TestFilms;

namespace Silkwright.Film.Tests.TestFilms;

public class FilmMakerTests
{
    private const string Small = """
        { "name": "Small", "widthMm": 40, "heightMm": 30, "dpi": 600,
          "parts": { "mark": [ { "register": [5, 5, 3] } ] },
          "films": [ { "file": "small.tif", "shapes": [
            { "part": "mark" },
            { "rect": [10, 10, 20, 10] },
            { "disc": [20, 15, 2], "clear": true },
            { "text": "Ag 1l", "at": [20, 27], "sizeMm": 5 },
            { "ring": [34, 6, 3], "lineMm": 0.4 } ] } ] }
        """;

    /// <summary>Oracle: areas by plane geometry, 20 x 10 mm less a circle of 2 mm, and a ring of 2 pi 3 x 0.4 mm.</summary>
    [Fact]
    public void A_drawing_prints_the_area_it_says()
    {
        using var folder = new TestFolder();
        var recipe = FilmRecipeReader.Parse(Small, "small.json")[0];
        var plain = recipe with { Shapes = [.. recipe.Shapes.Where(s => s.Lettering is null).Skip(1)] };
        FilmMaker.Draw(plain, folder["small.tif"], null, CancellationToken.None);
        var film = FilmMeasurer.Measure(folder["small.tif"], new FilmOptions(), null, TimeProvider.System, CancellationToken.None).Measurement;
        var area = 200 - (Math.PI * 4) + (2 * Math.PI * 3 * 0.4);
        Assert.Equal(100 * area / (40 * 30), film.CoveragePercent, 0.05);
        Assert.Equal((40, 30), (Math.Round(film.WidthMm), Math.Round(film.HeightMm)));
    }

    [Fact]
    public void Lettering_and_marks_are_really_drawn()
    {
        var recipe = FilmRecipeReader.Parse(Small, "small.json")[0];
        var letters = FilmMaker.Bits(recipe with { Shapes = [.. recipe.Shapes.Where(s => s.Lettering is not null)] });
        Assert.InRange(BitRow.Count(letters.All), 4000, 40_000);
        var mark = FilmMaker.Bits(recipe with { Shapes = [recipe.Shapes[0]] });
        Assert.InRange(BitRow.Count(mark.All), 500, 5000);
    }

    [Fact]
    public void Strips_make_the_same_film_as_one_piece()
    {
        using var folder = new TestFolder();
        var recipe = FilmRecipeReader.Parse(Small, "small.json")[0];
        recipe = recipe with
        {
            Shapes = [.. recipe.Shapes, new FilmShape { Outline = "M2 8h36v14h-36Z", Halftone = new HalftoneFill(45, 22.5, 5, 90, [2, 0, 38, 0], false) }],
        };
        FilmMaker.Draw(recipe, folder["small.tif"], null, CancellationToken.None);
        Assert.Equal(Bitmaps.Pixels(FilmMaker.Bits(recipe)), Film.Tests.Readers.FilmReadingTests.Read(folder["small.tif"], new FilmOptions()));
    }

    [Fact]
    public void Every_fault_of_a_drawing_is_told_at_once()
    {
        const string Bad = """
            { "widthMm": "wide", "heightMm": 30, "dpi": 600,
              "films": [ { "file": "../a.tif", "shapes": [
                { "disc": [1, 2] }, { "part": "nobody" }, { "blob": 3 }, { "path": "nonsense Q" },
                { "rect": [0, 0, 1, 1], "halftone": { "lpi": 55, "angle": 0, "tone": [3, 197], "linear": [1, 1, 1, 1] } } ] } ] }
            """;
        var problems = Assert.Throws<InputProblemException>(() => FilmRecipeReader.Parse(Bad, "bad.json")).Problems;
        foreach (var part in new[] { "widthMm", "without a folder", "disc", "nobody", "one kind", "path data", "tones", "no length" })
            Assert.Contains(problems, p => p.What.Contains(part, StringComparison.Ordinal));
        Assert.Contains("not JSON", Assert.Throws<InputProblemException>(() => FilmRecipeReader.Parse("{", "x")).Problems[0].What, StringComparison.Ordinal);
    }
}
