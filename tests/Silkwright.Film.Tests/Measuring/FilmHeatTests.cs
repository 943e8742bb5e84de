using Silkwright.Film.Measuring;
using Silkwright.Film.Pictures;
using SkiaSharp;

namespace Silkwright.Film.Tests.Measuring;

public sealed class FilmHeatTests
{
    private const double Dpi = 1270; // 20 µm a pixel

    /// <summary>A film of three upright bars of known width, as PNG: 5 px = 100 µm, 12 px = 240 µm, 40 px = 800 µm. Against 200 µm and 300 µm.</summary>
    [Fact]
    public void The_narrow_bar_is_red_the_near_one_amber_and_the_wide_one_neither()
    {
        using var folder = new TestFolder();
        var path = Bars(folder);
        var heat = FilmHeat.Of(path, new FilmOptions(Dpi), 200, 40, CancellationToken.None);
        // Of 5 + 12 + 40 px across, 5 are narrower and 12 near; the wide bar's four corners lose a little to a round disc.
        Assert.Equal(100.0 * 5 / 57, heat.NarrowerPercent, 0.2);
        Assert.Equal(100.0 * 12 / 57, heat.NearPercent, 0.2);
        Assert.Equal((40, 40), (heat.WidthPx, heat.HeightPx));
        Assert.Equal(10 * 0.020, heat.MmPerPx, 1e-9);
        using var picture = SKBitmap.Decode(heat.Png);
        var (thin, near, wide, paper) = (picture.GetPixel(5, 20), picture.GetPixel(15, 20), picture.GetPixel(31, 20), picture.GetPixel(10, 20));
        Assert.True(thin.Red > 180 && thin.Green < 120 && thin.Blue < 120, $"{thin}");
        Assert.True(near.Red > 200 && near.Green is > 120 and < 200 && near.Blue < 80, $"{near}");
        Assert.True(wide.Red == wide.Green + 4 && wide.Red < 100, $"{wide}");
        Assert.Equal(SKColors.White, paper);
    }

    [Fact]
    public void A_mesh_fine_enough_leaves_the_film_without_colour()
    {
        using var folder = new TestFolder();
        var heat = FilmHeat.Of(Bars(folder), new FilmOptions(Dpi), 60, 40, CancellationToken.None);
        Assert.Equal(0, heat.NarrowerPercent, 0.05);
        Assert.Contains("0 % of what prints", heat.Svg("120/34"), StringComparison.Ordinal);
        Assert.StartsWith("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"8mm\"", heat.Svg("120/34"), StringComparison.Ordinal);
    }

    private static string Bars(TestFolder folder)
    {
        using var film = new SKBitmap(400, 400, SKColorType.Gray8, SKAlphaType.Opaque);
        film.Erase(SKColors.White);
        foreach (var (left, width) in (ReadOnlySpan<(int, int)>)[(50, 5), (149, 12), (300, 40)])
        {
            for (var y = 10; y < 390; y++)
            {
                for (var x = left; x < left + width; x++)
                    film.SetPixel(x, y, SKColors.Black);
            }
        }

        using var data = film.Encode(SKEncodedImageFormat.Png, 100);
        var path = folder["bars.png"];
        File.WriteAllBytes(path, data.ToArray());
        return path;
    }
}
