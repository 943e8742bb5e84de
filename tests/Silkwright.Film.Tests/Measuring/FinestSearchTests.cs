using Silkwright.Film.Measuring;
using Silkwright.Film.TestFilms;

namespace Silkwright.Film.Tests.Measuring;

public class FinestSearchTests
{
    /// <summary>Oracle: the contract's rule by flood fill on plain arrays, every w from 2 upwards; no screening discs there.</summary>
    [Fact]
    public void The_finest_part_is_what_the_plain_rule_says()
    {
        var random = new Random(43);
        var widths = new HashSet<int?>();
        for (var round = 0; round < 150; round++)
        {
            var pixels = Bitmaps.Random(random, random.Next(20, 130), random.Next(20, 60), random.NextDouble(), random.Next(2, 30));
            var bits = Bitmaps.Film(pixels);
            _ = FilmComponents.FindAndTakeOutSpecks(bits, null, CancellationToken.None);
            var cleaned = Bitmaps.Pixels(bits);
            foreach (var gap in new[] { false, true })
            {
                var expected = PlainOpening.Finest(cleaned, !gap, 400, 32);
                var found = new FinestSearch(bits, new FilmCells(bits), gap, null, 400, CancellationToken.None).Find();
                _ = widths.Add(expected);
                Assert.Equal(expected * 25400 / 400.0 ?? double.NaN, found?.WidthUm ?? double.NaN, 0.01);
            }
        }

        Assert.True(widths.Count > 8, "the random bitmaps should give many widths");
    }

    /// <summary>Lines and gaps are right to 1 px: the contract. Oracle: the widths that were drawn.</summary>
    [Theory]
    [InlineData(0, 0.12)]
    [InlineData(0, 0.25)]
    [InlineData(17, 0.15)]
    [InlineData(45, 0.2)]
    [InlineData(67, 0.4)]
    [InlineData(90, 0.3)]
    public void A_line_and_a_gap_are_right_to_a_pixel_at_any_angle(double turn, double mm)
    {
        var far = new FilmShape { Outline = "M2 14h12v4h-12Z" };
        var line = new FilmShape { Outline = "M-4 0L4 0", LineMm = mm, Placed = (turn, 8, 6) };
        var image = Finest(gap: false, far, line)!;
        Assert.Equal(mm * 1000, image.WidthUm, 25400 / 1200.0);
        Assert.Equal(8, image.Places[0].XMm, 0.6);
        Assert.Equal(6, image.Places[0].YMm, 0.6);
        var block = new FilmShape { Outline = "M1 1h14v10h-14Z" };
        var gap = Finest(gap: true, block, line with { Clear = true, Placed = (turn, 8, 6) })!;
        Assert.Equal(mm * 1000, gap.WidthUm, 25400 / 1200.0);
    }

    [Fact]
    public void A_sharp_tip_is_not_a_hairline()
    {
        // 60 degrees, 12 mm a side; nothing else on the film is narrower than the triangle itself.
        var tip = new FilmShape { Outline = "M8 3L14 13.392L2 13.392Z" };
        Assert.Null(Finest(gap: false, tip));
        Assert.Null(Finest(gap: true, tip));
    }

    [Fact]
    public void Dots_that_just_touch_are_not_a_hairline()
    {
        // 0.8 mm across, side by side; what is finest on this film is a dot itself.
        var dots = Enumerable.Range(0, 12).Select(i => new FilmShape { Outline = "M2 8a0.4 0.4 0 1 0 0.8 0a0.4 0.4 0 1 0 -0.8 0Z", Placed = (0, 0.8 * i, 0) });
        Assert.Equal(800, Finest(gap: false, [.. dots])!.WidthUm, 2 * 25400 / 1200.0);
        Assert.Null(Finest(gap: true, [.. dots]));
    }

    [Fact]
    public void A_small_dot_is_found_to_two_pixels()
    {
        var dot = Finest(gap: false, new FilmShape { Outline = "M7.8 8a0.2 0.2 0 1 0 0.4 0a0.2 0.2 0 1 0 -0.4 0Z" })!;
        Assert.Equal(400, dot.WidthUm, 2 * 25400 / 1200.0);
    }

    private static Artwork.FinestFeature? Finest(bool gap, params FilmShape[] shapes)
    {
        var bits = FilmBitmap.Of(FilmMaker.Bits(new FilmRecipe("test.tif", 16, 20, 1200, shapes)));
        _ = FilmComponents.FindAndTakeOutSpecks(bits, null, CancellationToken.None);
        return new FinestSearch(bits, new FilmCells(bits), gap, null, 1200, CancellationToken.None).Find();
    }
}
