using Silkwright.Film.Places;
using Silkwright.Film.Readers;
using Silkwright.Film.Tests.Measuring;

namespace Silkwright.Film.Tests.Places;

/// <summary>The oracle is opening written as plainly as it is said (<see cref="PlainOpening"/>), by every disc in turn.</summary>
public sealed class LocalWidthTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void On_thousands_of_random_bitmaps_it_is_the_largest_disc_whose_opening_keeps_the_pixel(int seed)
    {
        var random = new Random(seed);
        for (var round = 0; round < 1500; round++)
        {
            var (width, height) = (random.Next(1, 34), random.Next(1, 34));
            var pixels = Bitmaps.Random(random, width, height, random.NextDouble(), random.Next(1, 12));
            var film = Bitmaps.From(pixels);
            var expected = Widths(pixels);
            for (var look = 0; look < 12; look++)
            {
                var (x, y) = (random.Next(width), random.Next(height));
                var found = LocalWidth.At(film, x, y);
                Assert.True(expected[x, y] == found.WidthPx, $"seed {seed}, round {round}: at {x}, {y} of {width} x {height} {expected[x, y]} px, found {found}");
                Assert.Equal(pixels[x, y], found.IsImage);
                AssertDiscLiesInside(pixels, x, y, found);
            }
        }
    }

    /// <summary>A ring, where digital discs are least nested, and a wide field: every pixel.</summary>
    [Fact]
    public void On_rings_and_slanted_bars_it_is_right_at_every_pixel()
    {
        var pixels = new bool[64, 64];
        for (var y = 0; y < 64; y++)
        {
            for (var x = 0; x < 64; x++)
                pixels[x, y] = Math.Abs(Math.Sqrt(((x - 20) * (x - 20)) + ((y - 22) * (y - 22))) - 14) < 3.3 || Math.Abs((0.4 * x) + y - 66) < 7;
        }

        var (film, expected) = (Bitmaps.From(pixels), Widths(pixels));
        for (var y = 0; y < 64; y++)
        {
            for (var x = 0; x < 64; x++)
                Assert.Equal(expected[x, y], LocalWidth.At(film, x, y).WidthPx);
        }
    }

    [Fact]
    public void A_part_wider_than_any_disc_that_is_tried_is_at_least_so_wide()
    {
        var film = new PackedBitmap(600, 600);
        var wide = LocalWidth.At(film, 300, 300);
        Assert.True(wide.IsWidest);
        Assert.Equal(LocalWidth.MostPx, wide.WidthPx);

        // At the film's corner a round disc does not reach the pixel itself: no disc of two px or more that lies on the film and holds it but the square-like ones.
        Assert.True(LocalWidth.At(film, 0, 0).WidthPx < 10);
        Assert.Equal(253, LocalWidth.At(new PackedBitmap(600, 253), 300, 126).WidthPx);
    }

    private static void AssertDiscLiesInside(bool[,] pixels, int x, int y, LocalWidth found)
    {
        var (left, top) = (found.CentreX - (found.WidthPx / 2.0), found.CentreY - (found.WidthPx / 2.0));
        Assert.Equal((Math.Round(left), Math.Round(top)), (left, top));
        var disc = PlainOpening.Disc(found.WidthPx).Select(d => (X: (int)left + d.X, Y: (int)top + d.Y)).ToList();
        Assert.Contains((x, y), disc);
        Assert.All(disc, d => Assert.Equal(pixels[x, y], pixels[d.X, d.Y]));
    }

    /// <summary>The largest w whose opening keeps each pixel, by opening with every w there is room for.</summary>
    private static int[,] Widths(bool[,] pixels)
    {
        var (width, height) = (pixels.GetLength(0), pixels.GetLength(1));
        var widths = new int[width, height];
        for (var w = 1; w <= Math.Min(width, height); w++)
        {
            var (image, gap) = (PlainOpening.Residue(pixels, true, w), PlainOpening.Residue(pixels, false, w));
            for (var y = 0; y < height; y++)
            {
                for (var x = 0; x < width; x++)
                {
                    if (!image[x, y] && !gap[x, y])
                        widths[x, y] = w;
                }
            }
        }

        return widths;
    }
}
