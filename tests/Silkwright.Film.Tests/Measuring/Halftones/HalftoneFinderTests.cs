using Silkwright.Artwork;
using Silkwright.Film.Measuring;
using Silkwright.Film.Readers;
using Silkwright.Film.TestFilms;

namespace Silkwright.Film.Tests.Measuring.Halftones;

/// <summary>Oracle: the ruling, angle and tones the test film was drawn with.</summary>
public class HalftoneFinderTests
{
    [Theory]
    [InlineData(55, 22.5)]
    [InlineData(45, 0)]
    [InlineData(65, 75)]
    [InlineData(35, 45)]
    [InlineData(55, 61)]
    public void Ruling_angle_and_tones_of_a_gradient_are_what_was_drawn(double lpi, double angle)
    {
        var zone = Assert.Single(Measure(60, 40, Area("M5 5h50v30h-50Z", lpi, angle, 3, 97, 5, 55)).Halftones);
        Assert.Equal(lpi, zone.RulingLpi, 0.1);
        Assert.True(Math.Abs(Math.IEEERemainder(angle - zone.AngleDegrees, 90)) < 0.2, $"{zone.AngleDegrees}");

        // A dot's tone is that of its centre; the first and last whole dots stand up to a period inside the ends.
        var step = 94 * 25.4 / lpi / 50;
        Assert.InRange(zone.TonePercentMin, 2.5, 3.5 + step);
        Assert.InRange(zone.TonePercentMax, 96.5 - step, 97.5);
        Assert.Equal(5, zone.XMm, 1.0);
        Assert.Equal(50, zone.WidthMm, 1.5);
    }

    [Theory]
    [InlineData(10)]
    [InlineData(30)]
    [InlineData(60)]
    [InlineData(90)]
    public void A_flat_tone_has_its_tone_and_its_dot_or_hole(double tone)
    {
        var zone = Assert.Single(Measure(40, 40, Area("M5 5h30v30h-30Z", 55, 22.5, tone, tone, 5, 35)).Halftones);
        Assert.Equal(tone, zone.TonePercentMin, 0.5);
        Assert.Equal(tone, zone.TonePercentMax, 0.5);

        // Equal-area diameter of a dot or hole: d = p sqrt(4 a / pi), plane geometry; the first percentile may be 2 px less.
        var period = 25400 / 55.0;
        var part = tone < 78 ? tone : 100 - tone;
        var diameter = tone < 78 ? zone.SmallestDotUm : zone.SmallestHoleUm;
        Assert.NotNull(diameter);
        Assert.Equal(period * Math.Sqrt(4 * part / 100 / Math.PI), diameter.Value, 2 * 25400 / 1200.0);
    }

    [Fact]
    public void Two_rulings_and_line_art_on_one_film_are_told_apart()
    {
        var film = Measure(
            80,
            60,
            Area("M5 5h30v25h-30Z", 55, 22.5, 10, 60, 5, 35),
            Area("M45 5h30v25h-30Z", 40, 52.5, 20, 70, 45, 75),
            new FilmShape { Outline = "M5 40L75 52", LineMm = 0.2 },
            new FilmShape { Lettering = new FilmLettering("Line art 12", 40, 57, 7) });
        Assert.Equal([40, 55], film.Halftones.Select(z => Math.Round(z.RulingLpi)).Order());
        Assert.Equal(200, film.FinestImage!.WidthUm, 25400 / 1200.0);
    }

    [Fact]
    public void Dots_cut_by_a_zone_s_edge_are_counted_and_never_read_as_hairlines()
    {
        var film = Measure(50, 50, Area("M25 5a20 20 0 1 0 0.01 0Z", 45, 22.5, 35, 35, 5, 45));
        var zone = Assert.Single(film.Halftones);

        // Oracle: dots of radius r whose centre is nearer than r to the circle, counted on the lattice that was drawn.
        var expected = CutOnCircle(45, 22.5, 0.35, 25, 25, 20);
        Assert.InRange(zone.CutDots, 0.75 * expected, 1.25 * expected);
        Assert.Null(film.FinestImage);
        Assert.Null(film.FinestGap);
        Assert.Equal(35, zone.TonePercentMin, 0.6);
    }

    /// <summary>A line drawn across a halftone near its lower edge; below it stand few dots, and cut ones. Oracle: the one area and the line's width that were drawn.</summary>
    [Theory]
    [InlineData("M2 30L58 34.8")]
    [InlineData("M2 34.6L58 33.2")]
    public void A_line_across_a_halftone_leaves_it_one_and_its_stranded_dots_are_no_hairlines(string line)
    {
        var film = Measure(60, 40, Area("M5 5h50v30h-50Z", 45, 22.5, 12, 12, 5, 55), new FilmShape { Outline = line, LineMm = 0.7 });
        var zone = Assert.Single(film.Halftones);
        Assert.Equal(30, zone.HeightMm, 0.8);
        Assert.Equal(700, film.FinestImage!.WidthUm, 25400 / 1200.0);
        Assert.Null(film.FinestGap);
    }

    /// <summary>Oracle: the twenty dots that were drawn, two to three periods from the halftone and eight times the area of its dots.</summary>
    [Fact]
    public void Larger_dots_beside_a_halftone_are_no_part_of_it()
    {
        // Spread over the lattice's phases, so that some stand on its sites.
        var beside = Enumerable.Range(0, 20).Select(i => new FilmShape
        {
            Outline = "M0 0a0.18 0.18 0 1 0 0.36 0a0.18 0.18 0 1 0 -0.36 0Z",
            Placed = (0, 56.1 + (0.02 * i), 6 + (1.4 * i)),
        });
        var film = Measure(60, 40, [Area("M5 5h50v30h-50Z", 45, 22.5, 4, 4, 5, 55), .. beside]);
        Assert.Equal(20, film.FinestImage!.Places.Count);
        Assert.All(film.FinestImage.Places, place => Assert.InRange(place.XMm, 56, 57));
    }

    /// <summary>Its topmost dot is nobody's neighbour but its own neighbours'. Oracle: the ruling and the angle that were drawn.</summary>
    [Fact]
    public void A_halftone_whose_first_dot_leads_nowhere_is_found_all_the_same()
    {
        var shape = new FilmShape { Outline = "M68.84 141.43l12.16 85.3L80.42 246.96Z", Halftone = new HalftoneFill(62, 40.32, 38, 46, [68.84, 141.43, 81, 246.96], false) };
        var recipe = new FilmRecipe("test.tif", 128, 288, 600, [shape]);
        var bits = FilmBitmap.Of(FilmMaker.Bits(recipe));
        var zone = Assert.Single(FilmMeasurer.Measure(bits, new FilmHeader("test.tif", bits.Width, bits.Height, 600, []), CancellationToken.None).Halftones);
        Assert.Equal(62, zone.RulingLpi, 0.1);
        Assert.Equal(40.32, zone.AngleDegrees, 0.2);
    }

    /// <summary>
    /// 2.7 mm apart, where the finer one's dots happen to meet sites of the coarser one and would be taken for its own. Oracle: the rulings, angles and tones that were drawn.
    /// </summary>
    [Fact]
    public void A_halftone_beside_a_finer_one_of_another_angle_is_found_with_its_own_tones()
    {
        FilmShape coarse = new() { Outline = "M68.42 16.7h12.93v163.3h-12.93Z", Halftone = new HalftoneFill(31, 62.39, 28, 15, [68.42, 16.7, 81.35, 180], false) };
        FilmShape fine = new() { Outline = "M36.59 105.14h29.14v34.94h-29.14Z", Halftone = new HalftoneFill(58, 54.49, 44, 29, [36.59, 105.14, 65.73, 140.08], false) };
        var bits = FilmBitmap.Of(FilmMaker.Bits(new FilmRecipe("test.tif", 128, 288, 600, [coarse, fine])));
        var zones = FilmMeasurer.Measure(bits, new FilmHeader("test.tif", bits.Width, bits.Height, 600, []), CancellationToken.None).Halftones.OrderBy(z => z.RulingLpi).ToList();
        Assert.Equal([31, 58], zones.Select(z => Math.Round(z.RulingLpi, 1)));
        Assert.Equal(62.39, zones[0].AngleDegrees, 0.2);
        Assert.Equal(15, zones[0].TonePercentMin, 0.6);
        Assert.Equal(28, zones[0].TonePercentMax, 0.6);
        Assert.Equal(54.49, zones[1].AngleDegrees, 0.2);
    }

    [Fact]
    public void Lettering_alone_has_no_halftone()
    {
        var film = Measure(80, 30, new FilmShape { Lettering = new FilmLettering("iiiiiiii ........ ::::::::", 40, 20, 8) });
        Assert.Empty(film.Halftones);
        Assert.NotNull(film.FinestDot);
    }

    private static int CutOnCircle(double lpi, double angle, double tone, double cx, double cy, double radius)
    {
        var p = 25.4 / lpi;
        var r = p * Math.Sqrt(tone / Math.PI);
        var (c, s) = (Math.Cos(angle * Math.PI / 180), Math.Sin(angle * Math.PI / 180));
        var count = 0;
        for (var i = -200; i < 200; i++)
        {
            for (var j = -200; j < 200; j++)
            {
                var (u, v) = ((i + 0.5) * p, (j + 0.5) * p);
                var (x, y) = ((u * c) + (v * s), (v * c) - (u * s));
                if (Math.Abs(Math.Sqrt(Math.Pow(x - cx, 2) + Math.Pow(y - cy, 2)) - radius) < r)
                    count++;
            }
        }

        return count;
    }

    private static FilmShape Area(string outline, double lpi, double angle, double from, double to, double x0, double x1) =>
        new() { Outline = outline, Halftone = new HalftoneFill(lpi, angle, from, to, [x0, 0, x1, 0], false) };

    private static FilmMeasurement Measure(double width, double height, params FilmShape[] shapes)
    {
        var recipe = new FilmRecipe("test.tif", width, height, 1200, shapes);
        var bits = FilmBitmap.Of(FilmMaker.Bits(recipe));
        return FilmMeasurer.Measure(bits, new FilmHeader("test.tif", bits.Width, bits.Height, 1200, []), CancellationToken.None);
    }
}
