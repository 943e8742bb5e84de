using Silkwright.Artwork;
using Silkwright.Film.Measuring;
using Silkwright.Film.Measuring.Halftones;
using Silkwright.Film.TestFilms;

namespace Silkwright.Film.Tests.Measuring.Halftones;

/// <summary>A film whose lattices are looked for in swaths, against the same film looked at as a whole.</summary>
public class SwathTests
{
    private const double Dpi = 600;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    /// <summary>
    /// A zone across all swaths whose tone runs down the film, a round one, two of like ruling that do not touch, one turned U, one of a few columns, and a line across a seam.
    /// </summary>
    private const string Shapes = """
        {"rect": [4, 4, 30, 280], "halftone": {"lpi": 55, "angle": 22.5, "tone": [4, 92], "linear": [0, 4, 0, 284]}},
        {"path": "M60 80a20 20 0 1 0 0.01 0Z", "halftone": {"lpi": 45, "angle": 15, "tone": [30, 60], "linear": [40, 80, 80, 120]}},
        {"rect": [40, 130, 38, 30], "halftone": {"lpi": 50, "angle": 45, "tone": [10, 10], "linear": [0, 0, 1, 0]}},
        {"rect": [40, 163, 38, 30], "halftone": {"lpi": 50, "angle": 45, "tone": [20, 20], "linear": [0, 0, 1, 0]}},
        {"path": "M84 10h10v260h20v-260h10v270h-40Z", "halftone": {"lpi": 40, "angle": 61, "tone": [25, 75], "linear": [84, 0, 124, 0]}},
        {"rect": [40, 200, 1.6, 84], "halftone": {"lpi": 55, "angle": 7.5, "tone": [30, 30], "linear": [0, 0, 1, 0]}},
        {"line": [2, 66, 126, 78], "lineMm": 0.4}, {"text": "seam", "at": [50, 72], "sizeMm": 6}
        """;

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Zones_and_what_they_hide_are_the_same_in_any_number_of_swaths(int count)
    {
        var film = Drawn(Shapes);
        var (image, gap) = FilmComponents.FindAndTakeOutSpecks(film, Dpi, Cancel);
        var swaths = Swath.Of(film.Height, count, Dpi, together: 1);
        Assert.Equal(count, swaths.Count);
        var (whole, wholeMask) = HalftoneFinder.Find(film, image, gap, Dpi, Swath.Of(film.Height, 1, Dpi), Cancel);
        var (zones, mask) = HalftoneFinder.Find(film, image, gap, Dpi, swaths, Cancel);
        Assert.Equal(6, whole.Count);
        Assert.Equal(whole.Count, zones.Count);
        foreach (var (one, other) in whole.Zip(zones))
            AssertAlike(one, other);
        var (differ, hidden) = (0L, wholeMask!.Count());
        for (var y = 0; y < film.Height; y++)
        {
            for (var word = 0; word < film.Stride; word++)
                differ += System.Numerics.BitOperations.PopCount(wholeMask.Word(y, word) ^ mask!.Word(y, word));
        }

        Assert.InRange(differ, 0, hidden / 2000);
    }

    /// <summary>Fourteen halftones of random shape, ruling, angle and tones, none on another, and lines across them.</summary>
    [Theory]
    [InlineData(2)]
    [InlineData(16)]
    [InlineData(36)]
    [InlineData(64)]
    [InlineData(71)]
    public void Rulings_angles_and_tones_of_films_drawn_by_chance_are_the_same_in_swaths(int seed)
    {
        var film = Drawn(string.Join(',', DrawnByChance(new Random(seed))));
        var (image, gap) = FilmComponents.FindAndTakeOutSpecks(film, Dpi, Cancel);
        var (whole, _) = HalftoneFinder.Find(film, image, gap, Dpi, Swath.Of(film.Height, 1, Dpi), Cancel);
        var (zones, _) = HalftoneFinder.Find(film, image, gap, Dpi, Swath.Of(film.Height, 4, Dpi, together: 1), Cancel);
        Assert.InRange(whole.Count, 10, 14);
        Assert.Equal(whole.Count, zones.Count);
        foreach (var (one, other) in whole.OrderBy(z => z.XMm).ThenBy(z => z.YMm).Zip(zones.OrderBy(z => z.XMm).ThenBy(z => z.YMm)))
        {
            Assert.Equal(one.RulingLpi, other.RulingLpi, 0.005);
            Assert.Equal(one.AngleDegrees, other.AngleDegrees, 0.01);
            Assert.Equal(one.TonePercentMin, other.TonePercentMin, 0.5);
            Assert.Equal(one.TonePercentMax, other.TonePercentMax, 0.5);
        }
    }

    [Fact]
    public void Swaths_follow_each_other_over_the_whole_film_and_have_rows_in_common()
    {
        var swaths = Swath.Of(48_000, 2_000_000, 2400);
        Assert.Equal(7, swaths.Count);
        Assert.True(swaths[0].From <= 0);
        Assert.True(swaths[^1].To >= 48_000);

        // Twenty periods of 15 lines an inch.
        Assert.All(swaths.Zip(swaths.Skip(1)), pair => Assert.Equal(3200, pair.First.To - pair.Second.From, 1e-6));
        Assert.Single(Swath.Of(48_000, 249_999, 2400));
        Assert.Single(Swath.Of(9_000, 5_000_000, 2400));
    }

    private static FilmBitmap Drawn(string shapes) => FilmBitmap.Of(FilmMaker.Bits(FilmRecipeReader.Parse(
        FormattableString.Invariant($$"""{"name":"t","widthMm":128,"heightMm":288,"dpi":{{Dpi}},"films":[{"file":"t.tif","shapes":[{{shapes}}]}]}"""), "t")[0]));

    private static IEnumerable<string> DrawnByChance(Random random)
    {
        for (var k = 0; k < 14; k++)
        {
            // Twelve small ones in two columns, two high ones beside.
            var high = k >= 12;
            var (cellX, cellY, cellWidth, cellHeight) = high ? (68 + (16 * (k - 12)), 2.0, 15.0, 284.0) : (2 + (33 * (k % 2)), 2 + (47 * (k / 2)), 32.0, 46.0);
            var (width, height) = (Between(high ? 3 : 1, cellWidth - 1), Between(high ? 100 : 1, cellHeight - 1));
            var (x, y) = (Between(cellX, cellX + cellWidth - width), Between(cellY, cellY + cellHeight - height));
            var outline = random.Next(3) switch
            {
                0 => Say($"M{x} {y}h{width}v{height}h-{width}Z"),
                1 => Say($"M{x} {y}l{width} {Between(0, height)}L{x + Between(0, width)} {y + height}Z"),
                _ => Say($"M{x + (width / 2)} {y}a{width / 2} {height / 2} 0 1 0 0.01 0Z"),
            };
            var (lpi, angle, from, to) = (random.Next(30, 66), Between(0, 89), random.Next(4, 90), random.Next(4, 90));
            yield return Say($$"""{"path": "{{outline}}", "halftone": {"lpi": {{lpi}}, "angle": {{angle}}, "tone": [{{from}}, {{to}}], "linear": [{{x}}, {{y}}, {{x + width}}, {{y + height}}] } }""");
        }

        for (var k = random.Next(5); k > 0; k--)
            yield return Say($$"""{"line": [{{Between(1, 90)}}, {{Between(1, 280)}}, {{Between(1, 90)}}, {{Between(1, 280)}}], "lineMm": {{Between(0.2, 1)}}}""");

        double Between(double least, double most) => Math.Round(least + ((most - least) * random.NextDouble()), 2);

        static string Say(FormattableString text) => FormattableString.Invariant(text);
    }

    private static void AssertAlike(HalftoneZone one, HalftoneZone other)
    {
        var px = 25.4 / Dpi;
        Assert.Equal(one.RulingLpi, other.RulingLpi, 0.005);
        Assert.Equal(one.AngleDegrees, other.AngleDegrees, 0.01);
        Assert.Equal(one.TonePercentMin, other.TonePercentMin, 0.15);
        Assert.Equal(one.TonePercentMax, other.TonePercentMax, 0.15);
        Assert.Equal(one.XMm, other.XMm, px);
        Assert.Equal(one.YMm, other.YMm, px);
        Assert.Equal(one.WidthMm, other.WidthMm, px);
        Assert.Equal(one.HeightMm, other.HeightMm, px);
        Assert.Equal(one.SmallestDotUm ?? 0, other.SmallestDotUm ?? 0, 1.0);
        Assert.Equal(one.SmallestHoleUm ?? 0, other.SmallestHoleUm ?? 0, 1.0);
        Assert.InRange(other.CutDots, (0.98 * one.CutDots) - 2, (1.02 * one.CutDots) + 2);
    }
}
