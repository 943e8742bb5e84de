using Silkwright.Artwork;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Plans;

namespace Silkwright.Tests.Plans;

public class ColourNeedsTests
{
    private static readonly FilmMeasurement Film = new()
    {
        File = "film.tif",
        WidthPx = 14_400,
        HeightPx = 19_200,
        Dpi = 1200,
        CoveragePercent = 12,
        Components = new FilmCounts(10, 5),
        Specks = new FilmCounts(0, 0),
        ImageWidths = [],
        Halftones = [],
    };

    private static readonly HalftoneZone Zone = new()
    {
        XMm = 0, YMm = 0, WidthMm = 100, HeightMm = 100, RulingLpi = 55, AngleDegrees = 22.5, TonePercentMin = 3, TonePercentMax = 97,
        SmallestDotUm = 90, SmallestHoleUm = 95, CutDots = 4,
    };

    private static JobColour Colour(FilmMeasurement? film = null, TypedNeeds? typed = null, WorkKind? kind = null) =>
        new() { Name = "one", Ink = InkKind.Plastisol, Film = film, Needs = typed, Kind = kind };

    [Fact]
    public void A_measured_film_outweighs_what_somebody_typed()
    {
        var needs = ColourNeeds.Of(Colour(Film with { FinestImage = new FinestFeature(170, []) }, new TypedNeeds(FinestLineUm: 900)));
        Assert.Equal(170, needs.FinestLineUm!.Value);
        Assert.Equal(Ground.MeasuredHere, needs.FinestLineUm.Ground);
    }

    /// <summary>12 x 16 inches by definition of the inch.</summary>
    [Fact]
    public void The_area_of_a_film_is_its_pixels_over_its_resolution() =>
        Assert.Equal(30.48 * 40.64, ColourNeeds.Of(Colour(Film)).FilmAreaCm2.Value, 6);

    [Fact]
    public void Line_work_with_nothing_narrow_asks_for_two_millimetres_and_a_halftone_by_its_dots()
    {
        var coarse = ColourNeeds.Of(Colour(Film));
        Assert.Equal(2000, coarse.FinestLineUm!.Value);
        Assert.Contains($"no line and no gap narrower than {Figures.Whole(2000)} µm is on it, so its finest is at least that", Assert.Single(coarse.Notes).Text, StringComparison.Ordinal);
        Assert.Contains(
            $"no gap narrower than {Figures.Whole(2000)} µm", Assert.Single(ColourNeeds.Of(Colour(Film with { FinestImage = new FinestFeature(170, []) })).Notes).Text, StringComparison.Ordinal);
        var halftone = ColourNeeds.Of(Colour(Film with { Halftones = [Zone] }));
        Assert.Null(halftone.FinestLineUm);
        Assert.Empty(halftone.Notes);
        Assert.Equal(90, halftone.SmallestDotUm!.Value);
        Assert.Equal(55, halftone.RulingLpi!.Value);
    }

    /// <summary>A bar of 0.4 mm at 1200 dpi (21.2 µm a pixel) that is read a pixel too wide has 5.3 % too much area.</summary>
    [Fact]
    public void Coverage_is_as_uncertain_as_the_widths_it_is_made_of()
    {
        var bars = Film with { ImageWidths = [new WidthShare(300, 0), new WidthShare(500, 100)] };
        var coverage = ColourNeeds.Of(Colour(bars)).CoveragePercent;
        Assert.Equal(12, coverage.Value);
        Assert.Equal(12 * 1.0529, coverage.High, 3);
        Assert.Equal(12 * 0.9471, coverage.Low, 3);
    }

    [Fact]
    public void What_was_told_is_not_measured()
    {
        var needs = ColourNeeds.Of(Colour(typed: new TypedNeeds(FinestLineUm: 250, FinestGapUm: 300, RulingLpi: 45, CoveragePercent: 30, AreaCm2: 900)));
        Estimate?[] told = [needs.FinestLineUm, needs.FinestGapUm, needs.RulingLpi, needs.CoveragePercent, needs.FilmAreaCm2];
        Assert.All(told, estimate => Assert.Equal(Ground.CommonPractice, estimate!.Ground));
        Assert.Contains(needs.Notes, note => note.Text.Contains("as told", StringComparison.Ordinal));
    }

    [Fact]
    public void The_finest_of_several_rulings_decides()
    {
        var coarse = Zone with { RulingLpi = 35, SmallestDotUm = 140 };
        var needs = ColourNeeds.Of(Colour(Film with { Halftones = [coarse, Zone] }));
        Assert.Equal(55, needs.RulingLpi!.Value);
        Assert.Equal(90, needs.SmallestDotUm!.Value);
    }

    [Fact]
    public void What_was_typed_outweighs_the_kind_of_work_and_the_rest_is_noted_as_assumed()
    {
        var needs = ColourNeeds.Of(Colour(typed: new TypedNeeds(CoveragePercent: 95), kind: WorkKind.FineLettering));
        Assert.Equal(95, needs.CoveragePercent.Value);
        Assert.Equal(100, needs.CoveragePercent.High);
        Assert.Equal(TypicalNeeds.Of(WorkKind.FineLettering).FinestLineUm, needs.FinestLineUm);
        Assert.Contains(needs.Notes, note => note.Ground == Ground.CommonPractice);
    }
}
