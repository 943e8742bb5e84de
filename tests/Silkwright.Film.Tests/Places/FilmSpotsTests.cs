using Silkwright.Estimates;
using Silkwright.Film.Measuring;
using Silkwright.Film.Places;
using Silkwright.Film.Readers;
using Silkwright.Film.TestFilms;

namespace Silkwright.Film.Tests.Places;

public sealed class FilmSpotsTests
{
    private const double Dpi = 1270; // 20 µm a pixel

    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    /// <summary>Drawn by hand on 3000 x 2000 px: an upright bar of 12 px (240 µm) from x = 1000, another from 1019, so a gap of 7 px (140 µm); a speck of 2 x 2 px in the open.</summary>
    [Theory]
    [InlineData(20.1, 20.0, true, false, 240)]
    [InlineData(20.3, 20.0, false, false, 140)]
    [InlineData(40.02, 20.02, false, true, 5080)]
    public void A_spot_has_its_kind_and_its_width(double xMm, double yMm, bool isImage, bool isSpeck, double widthUm)
    {
        using var folder = new TestFolder();
        var spot = FilmSpots.At(Bars(folder), new FilmOptions(), xMm, yMm, [], Cancel);
        Assert.Equal((isImage, isSpeck), (spot.IsImage, spot.IsSpeck));
        Assert.Equal(widthUm, spot.WidthUm, 1e-6);
        Assert.Equal(20, spot.PixelUm, 1e-9);
        Assert.Equal(xMm, spot.XMm, 0.011);
        Assert.Equal(yMm, spot.YMm, 0.011);
        Assert.Equal((widthUm - 20, isSpeck), (Math.Round(spot.LowUm, 6), spot.IsWidest));
        Assert.Equal(isSpeck ? double.NaN : widthUm + 20, spot.HighUm ?? double.NaN, 1e-6);
    }

    /// <summary>Cut out of its film or not, a spot's width is the same: what lies beyond the window cannot matter.</summary>
    [Fact]
    public void A_spot_of_a_large_film_has_the_width_it_has_with_the_whole_film_before_one()
    {
        using var folder = new TestFolder();
        var random = new Random(7);
        var pixels = Bitmaps.Random(random, 1400, 1200, 0.5, 90);
        var bits = Bitmaps.From(pixels);
        var path = folder["blocks.tif"];
        FilmTiffWriter.Write(path, 1400, 1200, Dpi, (top, rows, strip) =>
        {
            for (var y = 0; y < rows; y++)
                bits.Row(top + y).CopyTo(strip.Row(y));
        });
        var whole = FilmBitmap.Of(bits);
        _ = FilmComponents.FindAndTakeOutSpecks(whole, null, Cancel);
        bits = Bitmaps.From(Bitmaps.Pixels(whole));
        using var film = FilmFile.Open(path, new FilmOptions());
        for (var look = 0; look < 60; look++)
        {
            var (x, y) = (random.Next(1400), random.Next(1200));
            var spot = FilmSpots.At(film, (x + 0.5) * 0.02, (y + 0.5) * 0.02, [], Cancel);
            Assert.Equal(LocalWidth.At(bits, x, y).WidthPx * 20, spot.WidthUm, 1e-6);
        }
    }

    [Theory]
    [InlineData(-0.1, 5)]
    [InlineData(61, 5)]
    [InlineData(5, 40.01)]
    [InlineData(double.NaN, 5)]
    public void Off_the_film_is_told_with_the_films_size(double xMm, double yMm)
    {
        using var folder = new TestFolder();
        var path = Bars(folder);
        var fault = Assert.Throws<InputProblemException>(() => FilmSpots.At(path, new FilmOptions(), xMm, yMm, [], Cancel));
        Assert.Contains("60 mm wide and 40 mm high", fault.Problems[0].Remedy, StringComparison.Ordinal);
    }

    private static string Bars(TestFolder folder)
    {
        var path = folder["bars.tif"];
        FilmTiffWriter.Write(path, 3000, 2000, Dpi, (top, rows, strip) =>
        {
            for (var y = 0; y < rows; y++)
            {
                for (var x = 0; x < 12; x++)
                    strip[1000 + x, y] = strip[1019 + x, y] = true;
                if (top + y is 1000 or 1001)
                    strip[2000, y] = strip[2001, y] = true;
            }
        });
        return path;
    }
}
