using Silkwright.Film.TestFilms;

namespace Silkwright.Browser.Tests;

/// <summary>A film of the trade's kind: 1200 dpi, 1 bit, CCITT G4, drawn by our own maker.</summary>
internal static class TestFilm
{
    /// <summary>A large sheet, half of it a halftone, with a line of its own by which it is another film than the next.</summary>
    public static string DrawSheet(string folder, string name, int number)
    {
        var path = Path.Combine(folder, name);
        FilmMaker.Draw(
            new FilmRecipe(
                name,
                400,
                400,
                1200,
                [
                    new FilmShape { Outline = "M20 20H380V200H20Z", Halftone = new HalftoneFill(45, 22.5, 10, 90, [20, 0, 380, 0], false) },
                    new FilmShape { Outline = $"M20 {220 + (10 * number)}H380", LineMm = 0.8 },
                ]),
            path,
            null,
            CancellationToken.None);
        return path;
    }

    /// <summary>A solid block, a bold line and one line far finer than any textile mesh holds (0.06 mm).</summary>
    public static string Draw(string folder, string name)
    {
        var path = Path.Combine(folder, name);
        FilmMaker.Draw(
            new FilmRecipe(
                name,
                120,
                90,
                1200,
                [
                    new FilmShape { Outline = "M10 10H70V60H10Z" },
                    new FilmShape { Outline = "M80 12V78", LineMm = 1.2 },
                    new FilmShape { Outline = "M15 76H70", LineMm = 0.06 },
                ]),
            path,
            null,
            CancellationToken.None);
        return path;
    }
}
