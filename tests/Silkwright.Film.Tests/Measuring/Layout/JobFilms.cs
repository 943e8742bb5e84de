using Silkwright.Artwork;
using Silkwright.Film.Measuring.Layout;
using Silkwright.Film.TestFilms;

namespace Silkwright.Film.Tests.Measuring.Layout;

/// <summary>Films of one invented job, drawn as they should be and as they should not.</summary>
internal static class JobFilms
{
    public const string Marks = """{"register":[100,8,4]},{"register":[8,70,4]},{"register":[192,70,4]},{"register":[100,132,4]}""";

    /// <summary>An image that is not its own mirror image.</summary>
    public const string Heron = """{"path":"M40 110L70 40L80 40L90 110Z"},{"disc":[130,60,18]},{"text":"HERON 7","at":[110,112],"sizeMm":14},{"line":[50,30,160,25],"lineMm":0.4}""";

    /// <summary>Another colour of the same job.</summary>
    public const string Moon = """{"ring":[130,60,24],"lineMm":6},{"rect":[60,70,12,30]},{"text":"by night","at":[60,124],"sizeMm":8}""";

    /// <summary>A film 200 x 140 mm with shapes moved and then turned about the film's origin.</summary>
    public static FilmMeasurement Draw(string shapes, string file = "a.tif", double dpi = 600, (double Degrees, double X, double Y) placed = default, bool mirrored = false, double width = 200)
    {
        var json = FormattableString.Invariant($$"""{"name":"t","widthMm":{{width}},"heightMm":140,"dpi":{{dpi}},"films":[{"file":"{{file}}","shapes":[{{shapes}}]}]}""");
        var recipe = FilmRecipeReader.Parse(json, file)[0];
        if (placed != default)
            recipe = recipe with { Shapes = [.. recipe.Shapes.Select(shape => shape with { Placed = placed })] };
        var bits = FilmMaker.Bits(recipe);
        if (mirrored)
            bits = Mirrored(bits);
        var film = Film.Measuring.FilmBitmap.Of(bits);
        var (image, gap) = Film.Measuring.FilmComponents.FindAndTakeOutSpecks(film, dpi, CancellationToken.None);
        return new FilmMeasurement
        {
            File = file,
            WidthPx = bits.Width,
            HeightPx = bits.Height,
            Dpi = dpi,
            CoveragePercent = 0,
            Components = new FilmCounts(image.Count, gap.Count),
            Specks = new FilmCounts(0, 0),
            ImageWidths = [],
            Halftones = [],
            Layout = LayoutFinder.Of(film, image.Crosses, dpi, CancellationToken.None),
        };
    }

    private static Film.Readers.PackedBitmap Mirrored(Film.Readers.PackedBitmap bits)
    {
        var other = new Film.Readers.PackedBitmap(bits.Width, bits.Height);
        for (var y = 0; y < bits.Height; y++)
        {
            for (var x = 0; x < bits.Width; x++)
            {
                if (bits[x, y])
                    other[bits.Width - 1 - x, y] = true;
            }
        }

        return other;
    }
}
