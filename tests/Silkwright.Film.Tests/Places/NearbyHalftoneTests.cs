using Silkwright.Artwork;
using Silkwright.Film.Measuring;
using Silkwright.Film.Places;
using Silkwright.Film.TestFilms;

namespace Silkwright.Film.Tests.Places;

/// <summary>Whether a spot lies in a halftone. Oracle: the outlines that were drawn, in plane geometry.</summary>
public sealed class NearbyHalftoneTests
{
    private const double Lpi = 45, PeriodMm = 25.4 / Lpi, Dpi = 1200;

    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    /// <summary>An oval with half axes of 22 and 9 mm, turned by 35°, tones across it from 6 to 94 %. In the empty corners of its upright box: lines of 0.15 mm and scattered dots.</summary>
    [Fact]
    public void In_the_corners_of_the_box_about_an_oval_are_lines_and_in_the_oval_are_dots()
    {
        using var film = new Drawn(
            new FilmShape { Outline = "M-22 0A22 9 0 1 0 22 0A22 9 0 1 0 -22 0Z", Placed = (35, 30, 25), Halftone = new HalftoneFill(Lpi, 22.5, 6, 94, [12, 0, 48, 0], false) },
            new FilmShape { Outline = "M34 10.5L46 16M36 9.5L47 14.5M15 34L25 38", LineMm = 0.15 },
            new FilmShape { Outline = "M13 37.3a0.12 0.12 0 1 0 0.24 0a0.12 0.12 0 1 0 -0.24 0ZM14.1 38.7a0.12 0.12 0 1 0 0.24 0a0.12 0.12 0 1 0 -0.24 0Z" });
        var zone = Assert.Single(film.Zones);
        Assert.InRange(zone.WidthMm, 35, 40);
        var (inside, outside) = (0, 0);
        var random = new Random(11);
        for (var look = 0; look < 150; look++)
        {
            var (x, y) = (zone.XMm + (zone.WidthMm * random.NextDouble()), zone.YMm + (zone.HeightMm * random.NextDouble()));
            var spot = film.At(x, y);
            var from = FromOval(x - 30, y - 25);
            if (from < -PeriodMm)
                inside += Is(true, spot);
            else if (from > 2.5 * PeriodMm)
                outside += Is(false, spot);
        }

        Assert.True(inside > 50 && outside > 20, $"{inside} inside, {outside} outside");
        foreach (var (x, y) in ((double, double)[])[(40, 13.25), (41.5, 12), (20, 36), (13.12, 37.3), (14.22, 38.7)])
        {
            var spot = film.At(x, y);
            Assert.True(spot.IsImage, $"{x}, {y}");
            Assert.InRange(x, zone.XMm, zone.XMm + zone.WidthMm);
            Assert.InRange(y, zone.YMm, zone.YMm + zone.HeightMm);
            _ = Is(false, spot);
        }
    }

    /// <summary>An L of 30 x 30 mm with arms 8 mm wide; a line of 0.2 mm runs in its notch, parallel to an arm, 10 mm from it.</summary>
    [Theory]
    [InlineData(5)]
    [InlineData(50)]
    [InlineData(92)]
    public void In_the_notch_of_an_l_a_line_is_a_line(double tone)
    {
        using var film = new Drawn(
            new FilmShape { Outline = "M10 5H18V27H40V35H10Z", Halftone = new HalftoneFill(Lpi, 22.5, tone, tone, [10, 0, 40, 0], false) },
            new FilmShape { Outline = "M28 6V17", LineMm = 0.2 });
        _ = Assert.Single(film.Zones);
        _ = Is(false, film.At(28, 12));
        foreach (var (x, y) in ((double, double)[])[(14, 10), (14.1, 20.2), (13.3, 31), (30.3, 31.2), (36.7, 30.4)])
            _ = Is(true, film.At(x, y));
    }

    [Fact]
    public void Where_no_halftone_is_known_none_is_told()
    {
        using var film = new Drawn(new FilmShape { Outline = "M5 5h30v30h-30Z", Halftone = new HalftoneFill(Lpi, 22.5, 30, 30, [5, 0, 35, 0], false) });
        _ = Is(true, film.At(20, 20));
        Assert.False(FilmSpots.At(film.Path, new FilmOptions(), 20, 20, [], Cancel).IsInHalftone);
    }

    /// <summary>Distance from the oval's outline, negative within it; to first order, which is enough at a period or more. [mm]</summary>
    private static double FromOval(double x, double y)
    {
        var (c, s) = (Math.Cos(35 * Math.PI / 180), Math.Sin(35 * Math.PI / 180));
        var (u, v) = ((x * c) + (y * s), (y * c) - (x * s));
        var f = ((u / 22) * (u / 22)) + ((v / 9) * (v / 9)) - 1;
        return f / (2 * Math.Sqrt(Math.Pow(u / (22 * 22), 2) + Math.Pow(v / 81, 2)));
    }

    /// <summary>One that is judged; wide places are judged as gaps whatever is about them.</summary>
    private static int Is(bool inHalftone, FilmSpot spot)
    {
        if (inHalftone && spot.WidthUm > 1000 * Math.Sqrt(2) * PeriodMm)
            return 0;
        Assert.True(inHalftone == spot.IsInHalftone, $"{spot.XMm}, {spot.YMm}: {spot}");
        return 1;
    }

    private sealed class Drawn : IDisposable
    {
        private readonly TestFolder folder = new();

        public Drawn(params FilmShape[] shapes)
        {
            Path = folder["film.tif"];
            FilmMaker.Draw(new FilmRecipe("film.tif", 60, 50, Dpi, shapes), Path, null, Cancel);
            Zones = FilmMeasurer.Measure(Path, new FilmOptions(), null, TimeProvider.System, Cancel).Measurement.Halftones;
        }

        public string Path { get; }

        public IReadOnlyList<HalftoneZone> Zones { get; }

        public FilmSpot At(double xMm, double yMm) => FilmSpots.At(Path, new FilmOptions(), xMm, yMm, Zones, Cancel);

        public void Dispose() => folder.Dispose();
    }
}
