using System.Globalization;
using Silkwright.Film.TestFilms;

namespace Silkwright.Bench;

/// <summary>A film of a full-size press, drawn for the bench: halftones, lines and lettering, the same on every inch of its height. Invented artwork.</summary>
/// <remarks>Because every inch is alike, films of several heights tell how time grows with area.</remarks>
internal static class FullSizeFilm
{
    /// <summary>[px]</summary>
    public const int WidthPx = 38_400;

    /// <summary>[px]</summary>
    public const int HeightPx = 48_000;

    private const double Dpi = 2400;
    private const double Mm = 25.4;

    /// <summary>Two blocks an inch of 224 dashes of 0.12 mm, 1.1 mm apart and more, one of image and one of gap: any height has the 200 places that end a search.</summary>
    private const string Dashes = """
        , {"part": "dashes", "repeat": [16, 0, 1.5], "move": [85, 1.5]}, {"rect": [102, 0.9, 16.5, 24]}, {"part": "clear dashes", "repeat": [16, 0, 1.5], "move": [103, 1.5]}
        """;

    /// <summary>Draws the film if it is not there yet and gives its path.</summary>
    /// <param name="folder">Where.</param>
    /// <param name="heightPx">[px]</param>
    /// <param name="art">What is on it.</param>
    public static string Drawn(string folder, int heightPx, FullSizeArt art = FullSizeArt.Mixed)
    {
        var name = art switch { FullSizeArt.Mixed => "full-size", FullSizeArt.Dashed => "dashed", _ => "halftone" };
        var path = Path.Combine(folder, $"{name}-{heightPx}.tif");
        if (File.Exists(path))
            return path;
        _ = Directory.CreateDirectory(folder);
        FilmMaker.Draw(Recipe(heightPx, art), path + ".part", null, CancellationToken.None);
        File.Move(path + ".part", path);
        return path;
    }

    private static FilmRecipe Recipe(int heightPx, FullSizeArt art)
    {
        var (width, height) = (WidthPx * Mm / Dpi, heightPx * Mm / Dpi);
        var inches = (int)Math.Ceiling(height / Mm);
        return FilmRecipeReader.Parse(
            Say($$$"""
            {
              "name": "Full size", "note": "Invented artwork, drawn for the bench.", "widthMm": {{{width}}}, "heightMm": {{{height}}}, "dpi": {{{Dpi}}},
              "parts": {
                "dashes": [{"line": [0, 0, 0, 0.6], "lineMm": 0.12, "repeat": [14, 1.1, 0]}],
                "clear dashes": [{"line": [0, 0, 0, 0.6], "lineMm": 0.12, "clear": true, "repeat": [14, 1.1, 0]}],
                "inch": [
                  {"text": "WEAVERS' FIELD", "at": [168, 12], "sizeMm": 10},
                  {"text": "open on Thursdays from nine, mind the step by the mill race", "at": [168, 17], "sizeMm": 3.2, "light": true},
                  {"text": "lines of 0.15, 0.2, 0.3, 0.5 and 0.8 mm beside this, gaps alike", "at": [168, 22], "sizeMm": 2.4, "light": true},
                  {"line": [222, 3, 262, 21], "lineMm": 0.15}, {"line": [226, 3, 266, 21], "lineMm": 0.2}, {"line": [230, 3, 270, 21], "lineMm": 0.3},
                  {"line": [234, 3, 274, 21], "lineMm": 0.5}, {"line": [238, 3, 278, 21], "lineMm": 0.8}, {"ring": [290, 12.7, 8], "lineMm": 0.4},
                  {"rect": [352, 2, 46, 21]}, {"text": "CLEAR", "at": [375, 17], "sizeMm": 13, "clear": true}, {"line": [354, 20, 396, 19], "lineMm": 0.18, "clear": true},
                  {"line": [4, 0.5, 402, 0.5], "lineMm": 0.25}{{{(art == FullSizeArt.Dashed ? Dashes : "")}}}
                ]
              },
              "films": [{"file": "full-size.tif", "shapes": [{{{(art == FullSizeArt.Halftone ? Photograph(width, height) : Artwork(inches))}}}]}]
            }
            """),
            "full-size film")[0];
    }

    private static string Artwork(int inches) => Say(
        $$$"""
        {"path": "{{{Wave(8, 78, inches)}}}", "halftone": {"lpi": 55, "angle": 22.5, "tone": [3, 97], "linear": [10, 0, 82, 0]}},
        {"path": "{{{Wave(306, 334, inches)}}}", "halftone": {"lpi": 45, "angle": 15, "tone": [60, 8], "linear": [306, 0, 338, 0]}},
        {"part": "inch", "repeat": [{{{inches}}}, 0, {{{Mm}}}]}
        """);

    private static string Photograph(double width, double height) => Say(
        $$$"""
        {"rect": [4, 4, {{{width - 8}}}, {{{height - 8}}}], "halftone": {"lpi": 65, "angle": 22.5, "tone": [4, 92], "linear": [0, 0, {{{width}}}, 0]}}
        """);

    /// <summary>An upright stripe between two columns whose edges swing out and in once an inch.</summary>
    private static string Wave(double left, double right, int inches) =>
        Say($"M{left} 0") + string.Concat(Enumerable.Repeat("q4 6.35 0 12.7q-4 6.35 0 12.7", inches)) + Say($"H{right}")
        + string.Concat(Enumerable.Repeat("q-4 -6.35 0 -12.7q4 -6.35 0 -12.7", inches)) + "Z";

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
