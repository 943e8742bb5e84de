using Silkwright.Film.Measuring;
using Silkwright.Film.Pictures;
using Silkwright.Plans;
using SkiaSharp;

namespace Silkwright.Film.Tests.Measuring;

public sealed class FilmHeatTests
{
    private const double Dpi = 1270; // 20 µm a pixel

    /// <summary>A film of three upright bars of known width, as PNG: 5 px = 100 µm, 12 px = 240 µm, 40 px = 800 µm. Against 200 µm and 300 µm.</summary>
    [Fact]
    public void The_narrow_bar_is_vermilion_the_near_one_orange_and_the_wide_one_neither()
    {
        using var folder = new TestFolder();
        var path = Bars(folder);
        var heat = FilmHeat.Of(path, new FilmOptions(Dpi), Held(200), 40, HeatColours.Day, CancellationToken.None);
        // Of 5 + 12 + 40 px across, 5 are narrower and 12 near; the wide bar's four corners lose a little to a round disc.
        Assert.Equal(100.0 * 5 / 57, heat.NarrowerPercent, 0.2);
        Assert.Equal(100.0 * 12 / 57, heat.NearPercent, 0.2);
        Assert.Equal((40, 40), (heat.WidthPx, heat.HeightPx));
        Assert.Equal(10 * 0.020, heat.MmPerPx, 1e-9);
        using var picture = SKBitmap.Decode(heat.Png);
        var (thin, near, wide, paper) = (picture.GetPixel(5, 20), picture.GetPixel(15, 20), picture.GetPixel(31, 20), picture.GetPixel(10, 20));
        Assert.True(thin.Red > thin.Green + 60 && thin.Green > thin.Blue + 30, $"{thin}");
        Assert.True(near.Red > 200 && near.Green is > 120 and < 200 && near.Blue < 80, $"{near}");
        Assert.True(wide.Red == wide.Green + 4 && wide.Red < 100, $"{wide}");
        Assert.Equal(SKColors.White, paper);
    }

    [Fact]
    public void A_mesh_fine_enough_leaves_the_film_without_colour()
    {
        using var folder = new TestFolder();
        var heat = FilmHeat.Of(Bars(folder), new FilmOptions(Dpi), Held(60), 40, HeatColours.Day, CancellationToken.None);
        Assert.Equal(0, heat.NarrowerPercent, 0.05);
        Assert.Contains("0 % of what prints", heat.Svg("120/34", HeatColours.Day), StringComparison.Ordinal);
        Assert.StartsWith("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"8mm\"", heat.Svg("120/34", HeatColours.Day), StringComparison.Ordinal);
    }

    /// <summary>Solid black with upright slits of 5 px = 100 µm and 12 px = 240 µm, and one of 40 px.</summary>
    [Fact]
    public void Narrow_gaps_are_blue_and_near_ones_sky_blue()
    {
        using var folder = new TestFolder();
        var heat = FilmHeat.Of(Bars(folder, turned: true), new FilmOptions(Dpi), Held(200), 40, HeatColours.Day, CancellationToken.None);
        Assert.Equal(5 * 380 * 0.02 * 0.02, heat.GapNarrowerMm2, 0.02);
        Assert.Equal(12 * 380 * 0.02 * 0.02, heat.GapNearMm2, 0.02);
        using var picture = SKBitmap.Decode(heat.Png);
        var (thin, near, wide, solid) = (picture.GetPixel(5, 20), picture.GetPixel(15, 20), picture.GetPixel(31, 20), picture.GetPixel(10, 20));
        Assert.True(thin.Blue > thin.Red + 60 && thin.Green < 120, $"{thin}");
        Assert.True(near.Blue > 200 && near.Green > 150 && near.Red < 120, $"{near}");
        Assert.Equal(SKColors.White, wide);
        Assert.True(solid.Red == solid.Green + 4 && solid.Red < 100, $"{solid}");
    }

    /// <summary>Round dots of 6 px radius every 24 px: 12 px = 240 µm across, 20 µm a pixel. As lines they would be too narrow for 400 µm; as dots they are held from 200 µm.</summary>
    [Theory]
    [InlineData(200, 0)]
    [InlineData(300, 100)]
    public void Dots_of_a_halftone_are_held_against_the_dot_and_not_the_line(double dotUm, double percent)
    {
        using var folder = new TestFolder();
        var path = folder["dots.png"];
        using (var film = new SKBitmap(480, 480, SKColorType.Gray8, SKAlphaType.Opaque))
        {
            for (var y = 0; y < 480; y++)
            {
                for (var x = 0; x < 480; x++)
                    film.GetPixelSpan()[(y * film.RowBytes) + x] = Math.Pow((x % 24) - 11.5, 2) + Math.Pow((y % 24) - 11.5, 2) <= 36 ? (byte)0 : (byte)255;
            }

            using var data = film.Encode(SKEncodedImageFormat.Png, 100);
            File.WriteAllBytes(path, data.ToArray());
        }

        var heat = FilmHeat.Of(path, new FilmOptions(Dpi), HeldWidths.Of(400, dotUm), 40, HeatColours.Day, CancellationToken.None);
        Assert.Equal(percent, heat.NarrowerPercent, 1e-9);
        Assert.Equal(100 - percent, heat.NearPercent, 1e-9);
    }

    /// <summary>Relative luminance and contrast as WCAG 2.2 defines them.</summary>
    [Fact]
    public void In_safe_light_all_kinds_differ_by_light_alone_and_nothing_but_red_is_sent()
    {
        var colours = HeatColours.SafeLight;
        var reds = new[] { colours.Paper, colours.Ink, colours.Narrower, colours.Near, colours.GapNarrower, colours.GapNear }.Select(SKColor.Parse).ToArray();
        Assert.All(reds, colour => Assert.Equal((0, 0), (colour.Green, colour.Blue)));
        var lights = reds.Select(colour => (0.2126 * Linear(colour.Red / 255.0)) + 0.05).Order().ToArray();
        Assert.All(lights.Zip(lights.Skip(1)), pair => Assert.True(pair.Second / pair.First > 1.35, $"{pair}"));

        static double Linear(double value) => value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
    }

    private static HeldWidths Held(double um) => HeldWidths.Of(um, um);

    private static string Bars(TestFolder folder, bool turned = false)
    {
        using var film = new SKBitmap(400, 400, SKColorType.Gray8, SKAlphaType.Opaque);
        film.Erase(turned ? SKColors.Black : SKColors.White);
        foreach (var (left, width) in (ReadOnlySpan<(int, int)>)[(50, 5), (149, 12), (300, 40)])
        {
            for (var y = 10; y < 390; y++)
            {
                for (var x = left; x < left + width; x++)
                    film.SetPixel(x, y, turned ? SKColors.White : SKColors.Black);
            }
        }

        using var data = film.Encode(SKEncodedImageFormat.Png, 100);
        var path = folder["bars.png"];
        File.WriteAllBytes(path, data.ToArray());
        return path;
    }
}
