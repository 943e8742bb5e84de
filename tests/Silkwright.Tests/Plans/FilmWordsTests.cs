using System.Globalization;
using Silkwright.Artwork;
using Silkwright.Contracts;
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
        Assert.StartsWith("No line narrower than 2.00 mm outside the halftones; no gap narrower than 2.00 mm outside", Words(Film with { FinestImage = null, FinestGap = null }, null), StringComparison.Ordinal);

    [Fact]
    public void Where_there_is_no_halftone_none_is_spoken_of() =>
        Assert.Equal("No line narrower than 2.00 mm; no gap narrower than 2.00 mm; prints less than 0.1 % of its area.", Words(Film with { FinestImage = null, FinestGap = null, Halftones = [], CoveragePercent = 0.04 }, null));

    /// <summary>254 px of 6350 dpi, 4 µm each, are 1016 µm.</summary>
    [Fact]
    public void On_a_fine_grid_no_more_is_told_than_was_looked_for() =>
        Assert.StartsWith("No line narrower than 1.02 mm;", Words(Film with { FinestImage = null, Dpi = 6350, Halftones = [] }, null), StringComparison.Ordinal);

    [Theory]
    [InlineData(72, "72 dpi is coarse for a film")]
    [InlineData(300, "a pixel is 85 µm")]
    [InlineData(600, null)]
    public void A_resolution_that_is_hardly_a_film_s_is_remarked(double dpi, string? says)
    {
        var remarks = FilmRemarks.Of(Film with { Dpi = dpi, Remarks = ["Greys were cut."] }).ToArray();
        Assert.Equal("Greys were cut.", remarks[0]);
        Assert.Equal(says is null ? 1 : 2, remarks.Length);
        if (says is not null)
            Assert.Contains(says, remarks[1], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(15_000, 6_000, true, true)]
    [InlineData(15_000, 6_000, false, false)]
    [InlineData(500, 3_000, true, false)]
    public void More_pieces_than_line_work_has_and_no_halftone_are_remarked(long pieces, long specks, bool noHalftone, bool isRemarked)
    {
        var film = Film with { Components = new FilmCounts(pieces, 1), Specks = new FilmCounts(specks, 0), Halftones = noHalftone ? [] : Film.Halftones };
        Assert.Equal(isRemarked, FilmRemarks.Of(film).Any(remark => remark.StartsWith("21\u202f000 pieces print, and no halftone", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(0, 1, 1200, 0, "Nothing but 1\u202f200 specks of four pixels or fewer is on this film: there is no artwork. Look at the file")]
    [InlineData(0, 1, 1, 0, "Nothing but 1 speck of four pixels or fewer is on this film")]
    [InlineData(0, 1, 0, 0, "Nothing prints anywhere on this film: there is no artwork. Look at the file")]
    [InlineData(1, 0, 0, 3, "All of this film prints but for 3 specks of four pixels or fewer: there is no artwork. Look at the file")]
    [InlineData(1, 0, 0, 0, "All of this film prints: there is no artwork. Look at the file")]
    public void A_film_without_artwork_is_told_as_that_with_what_to_do_and_before_anything_is_coated(long image, long gap, long imageSpecks, long gapSpecks, string says)
    {
        var bare = Film with { FinestImage = null, FinestGap = null, Halftones = [], Components = new FilmCounts(image, gap), Specks = new FilmCounts(imageSpecks, gapSpecks) };
        var words = Words(bare, WovenMesh.Of(new MeshFabric(61, 64)));
        Assert.StartsWith(says, words, StringComparison.Ordinal);
        Assert.DoesNotContain("can hold", words, StringComparison.Ordinal);
        Assert.Equal($"a.tif: {words}", FilmDocument.Together([Film, bare]).Remarks[0]);
        Assert.DoesNotContain(FilmDocument.Together([Film, Film]).Remarks, remark => remark.Contains("no artwork", StringComparison.Ordinal));
    }

    private static string Words(FilmMeasurement film, WovenMesh? mesh) => FilmWords.Of(
        film, mesh, um => (um / 1000).ToString("0.00", CultureInfo.InvariantCulture) + " mm", mm => mm.ToString("0.0", CultureInfo.InvariantCulture));
}
