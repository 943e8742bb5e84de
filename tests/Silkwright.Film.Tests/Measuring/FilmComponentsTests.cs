using BitMiracle.LibTiff.Classic;
using Silkwright.Film.Measuring;
using Silkwright.Film.Readers;
using Silkwright.Film.Tests.Readers;

namespace Silkwright.Film.Tests.Measuring;

public class FilmComponentsTests
{
    /// <summary>Oracle: flood fill on a plain array (Bitmaps.Components), 3000 bitmaps, odd widths, bands as low as one row.</summary>
    [Fact]
    public void Components_specks_and_dots_equal_those_of_a_flood_fill()
    {
        var random = new Random(41);
        for (var round = 0; round < 3000; round++)
        {
            var pixels = Bitmaps.Random(
                random, random.Next(1, 150), random.Next(1, 40), random.NextDouble(), random.Next(1, 5));
            var bits = Bitmaps.Film(pixels);
            var (image, gap) = FilmComponents.FindAndTakeOutSpecks(bits, null, random.Next(1, 20), CancellationToken.None);
            var after = (bool[,])pixels.Clone();
            foreach (var (set, value) in new[] { (image, true), (gap, false) })
            {
                var parts = Bitmaps.Components(pixels, value);
                var large = parts.Where(p => p.Count > 4).ToList();
                Assert.Equal(large.Count, set.Count);
                Assert.Equal(parts.Count - large.Count, set.Specks);
                var expected = large
                    .Select(p => (p.Count, X: p.Average(q => q.X + 0.5), Y: p.Average(q => q.Y + 0.5),
                        Width: p.Max(q => q.X) - p.Min(q => q.X) + 1, Height: p.Max(q => q.Y) - p.Min(q => q.Y) + 1))
                    .OrderBy(d => d.Count).ThenBy(d => Math.Round(d.X, 2)).ThenBy(d => Math.Round(d.Y, 2)).ToList();
                var found = set.Dots
                    .OrderBy(d => d.Area).ThenBy(d => Math.Round((double)d.X, 2)).ThenBy(d => Math.Round((double)d.Y, 2)).ToList();
                Assert.Equal(expected.Count, found.Count);
                for (var i = 0; i < found.Count; i++)
                {
                    Assert.Equal(expected[i].Count, found[i].Area);
                    Assert.Equal(expected[i].X, found[i].X, 0.001);
                    Assert.Equal(expected[i].Y, found[i].Y, 0.001);
                    Assert.Equal(expected[i].Width, found[i].Width);
                    Assert.Equal(expected[i].Height, found[i].Height);
                }

                foreach (var (x, y) in parts.Where(p => p.Count <= 4).SelectMany(p => p))
                    after[x, y] = !value;
            }

            Assert.Equal(after, Bitmaps.Pixels(bits));
        }
    }

    /// <summary>The answer is the same to the last digit however the film's strips are cut, and the one that keeps no film agrees.</summary>
    [Fact]
    public void Figures_do_not_hang_on_how_a_film_is_packed()
    {
        using var folder = new TestFolder();
        var random = new Random(45);
        for (var round = 0; round < 30; round++)
        {
            var pixels = Bitmaps.Random(random, random.Next(100, 700), random.Next(200, 900), random.NextDouble(), random.Next(1, 9));
            Tiffs.Write(folder["a.tif"], pixels, 1, Compression.CCITTFAX4, Photometric.MINISWHITE, random.Next(1, 40));
            Tiffs.Write(folder["b.tif"], pixels, 1, Compression.LZW, Photometric.MINISWHITE, 10_000);
            var (a, b) = (Read(folder["a.tif"]), Read(folder["b.tif"]));
            Assert.Equal(a.Area, b.Area);
            Assert.Equal(a.Image.Dots, b.Image.Dots);
            Assert.Equal(a.Gap.Dots, b.Gap.Dots);
            Assert.Equal(Bitmaps.Pixels(a.Bits), Bitmaps.Pixels(b.Bits));
            var count = FilmMeasurer.Count(folder["a.tif"], new FilmOptions(1200), null, CancellationToken.None);
            Assert.Equal((a.Image.Count, a.Image.Specks, a.Gap.Count, a.Gap.Specks), (count.Components.Image, count.Specks.Image, count.Components.Gap, count.Specks.Gap));
            Assert.Equal(100.0 * pixels.Cast<bool>().Count(p => p) / pixels.Length, count.CoveragePercent, 1e-9);
        }
    }

    [Fact]
    public void A_film_with_too_much_fine_work_to_keep_is_refused_with_a_remedy()
    {
        using var folder = new TestFolder();
        Tiffs.Write(folder["a.tif"], Bitmaps.Random(new Random(46), 300, 900, 0.5, 3), 1, Compression.CCITTFAX4, Photometric.MINISWHITE, 20);
        using var film = FilmFile.Open(folder["a.tif"], new FilmOptions(1200));
        var bits = new FilmBitmap(film.Header.WidthPx, film.Header.HeightPx);
        var refused = Assert.Throws<Estimates.InputProblemException>(() => FilmComponents.Read(film, bits, null, CancellationToken.None, mostBytes: 12_500));
        Assert.Equal("a.tif", refused.Problems[0].Where);
        Assert.Contains("lower resolution", refused.Problems[0].Remedy, StringComparison.Ordinal);
    }

    private static (long Area, ComponentSet Image, ComponentSet Gap, FilmBitmap Bits) Read(string path)
    {
        using var film = FilmFile.Open(path, new FilmOptions(1200));
        var bits = new FilmBitmap(film.Header.WidthPx, film.Header.HeightPx);
        var (area, image, gap) = FilmComponents.Read(film, bits, null, CancellationToken.None);
        return (area, image, gap, bits);
    }
}
