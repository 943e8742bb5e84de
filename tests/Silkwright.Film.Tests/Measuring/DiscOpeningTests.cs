using Silkwright.Film.Measuring;

namespace Silkwright.Film.Tests.Measuring;

public class DiscOpeningTests
{
    /// <summary>Oracle: PlainOpening, on bitmaps over and across word and tile borders, image and gap.</summary>
    [Fact]
    public void Opening_equals_the_plain_one_to_the_pixel()
    {
        var random = new Random(42);
        for (var round = 0; round < 2000; round++)
        {
            var pixels = Bitmaps.Random(random, random.Next(1, 140), random.Next(1, 36), random.NextDouble(), random.Next(1, 24));
            var (w, gap) = (random.Next(2, 20), random.Next(2) == 1);
            Check(pixels, w, gap);
        }
    }

    [Theory]
    [InlineData(700, 300, 70)]
    [InlineData(2100, 300, 9)]
    [InlineData(900, 520, 31)]
    [InlineData(320, 320, 140)]
    [InlineData(420, 400, 301)]
    public void Large_discs_and_films_of_many_tiles_are_right_too(int width, int height, int w)
    {
        var pixels = Bitmaps.Random(new Random(w), width, height, 0.9, Math.Max(10, w - 3));
        Check(pixels, w, gap: false);
        Check(pixels, w, gap: true);
    }

    /// <summary>Oracle: the plain openings of a disc drawn on its own.</summary>
    [Fact]
    public void A_disc_is_open_by_another_where_plain_opening_leaves_it_whole()
    {
        for (var large = 2; large <= 30; large++)
        {
            var drawn = new bool[large, large];
            foreach (var (x, y) in PlainOpening.Disc(large))
                drawn[x, y] = true;
            for (var small = 1; small <= large; small++)
            {
                var whole = !PlainOpening.Residue(drawn, true, small).Cast<bool>().Any(b => b);
                Assert.Equal(whole, new DigitalDisc(large).IsOpenBy(new DigitalDisc(small)));
            }
        }
    }

    /// <summary>Oracle: every upright square tried on the plain disc.</summary>
    [Fact]
    public void The_largest_square_in_a_disc_is_known()
    {
        for (var w = 1; w <= 60; w++)
        {
            var disc = PlainOpening.Disc(w).ToHashSet();
            bool Holds(int side) => Enumerable.Range(0, w - side + 1).Any(x => Enumerable.Range(0, w - side + 1).Any(y =>
                Enumerable.Range(0, side * side).All(k => disc.Contains((x + (k % side), y + (k / side))))));
            var square = new DigitalDisc(w).Square;
            Assert.True(Holds(square) && !Holds(square + 1), $"{square} in {w}");
        }
    }

    private static void Check(bool[,] pixels, int w, bool gap)
    {
        var bits = Bitmaps.Film(pixels);
        var residue = new FilmBitmap(bits.Width, bits.Height);
        var tiles = new OpeningTiles(bits, new FilmCells(bits), gap, CancellationToken.None);
        tiles.Fill(w, null, residue);
        var expected = PlainOpening.Residue(pixels, !gap, w);
        Assert.Equal(expected, Bitmaps.Pixels(residue));
        Assert.Equal(expected.Cast<bool>().Count(b => b), tiles.Area(w));
    }
}
