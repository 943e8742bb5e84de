using System.Globalization;
using Silkwright.Artwork;
using Silkwright.Mesh;
using Silkwright.Plans;

namespace Silkwright.Tests.Plans;

public class FilmWordsTests
{
    private static readonly FilmMeasurement Film = new()
    {
        File = "a.tif",
        WidthPx = 1000,
        HeightPx = 1000,
        Dpi = 600,
        CoveragePercent = 1.94,
        Components = new FilmCounts(3, 1),
        Specks = new FilmCounts(0, 0),
        FinestImage = new FinestFeature(180, [new FilmPlace(12.3, 4.5, 180), new FilmPlace(1, 2, 400)]),
        FinestGap = new FinestFeature(90, [new FilmPlace(7, 8, 90)]),
        ImageWidths = [],
        Halftones = [new HalftoneZone { XMm = 0, YMm = 0, WidthMm = 9, HeightMm = 9, RulingLpi = 55, AngleDegrees = 22.5, TonePercentMin = 3, TonePercentMax = 97, SmallestDotUm = 90, CutDots = 0 }],
    };

    [Fact]
    public void A_film_is_told_as_a_printer_wants_it() =>
        Assert.Equal(
            "Finest line 0.18 mm at (12.3, 4.5); finest gap 0.09 mm at (7.0, 8.0); 55 lpi at 22.5 degrees, 3 to 97 %; prints 1.9 % of its area.",
            Words(Film, null));

    /// <summary>A mesh of 61 threads of 64 µm: three threads, 192 µm, are its smallest line (common practice, no source).</summary>
    [Fact]
    public void What_a_mesh_cannot_hold_is_counted()
    {
        var mesh = WovenMesh.Of(new MeshFabric(61, 64));
        Assert.Equal(192, mesh.SmallestLineUm.Value, 1.0);
        var on = FilmOnMesh.Of(Film, mesh);
        Assert.Equal((1, 1, false, 1, 0), (on.Lines, on.Gaps, on.MayBeMore, on.DotZones, on.HoleZones));
        Assert.Contains("1 line and 1 gap finer than the mesh 61/64 can hold, 0.19 mm", Words(Film, mesh), StringComparison.Ordinal);
    }

    [Fact]
    public void As_many_places_as_are_ever_told_may_be_more()
    {
        var many = Film with { FinestImage = new FinestFeature(50, [.. Enumerable.Range(0, FinestFeature.MostPlaces).Select(i => new FilmPlace(i, 0, 50))]) };
        Assert.Contains("at least 200 lines", Words(many, WovenMesh.Of(new MeshFabric(61, 64))), StringComparison.Ordinal);
    }

    [Fact]
    public void A_film_of_nothing_narrow_says_so() =>
        Assert.StartsWith("No narrow line outside the halftones; no narrow gap", Words(Film with { FinestImage = null, FinestGap = null }, null), StringComparison.Ordinal);

    private static string Words(FilmMeasurement film, WovenMesh? mesh) => FilmWords.Of(
        film, mesh, um => (um / 1000).ToString("0.00", CultureInfo.InvariantCulture) + " mm", mm => mm.ToString("0.0", CultureInfo.InvariantCulture));
}
