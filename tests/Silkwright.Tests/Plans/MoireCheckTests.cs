using Silkwright.Artwork;
using Silkwright.Contracts;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Mesh;
using Silkwright.Moire;
using Silkwright.Plans;

namespace Silkwright.Tests.Plans;

public class MoireCheckTests
{
    /// <summary>Two and a half threads to a line: mesh makers' guidance seen puts the greatest risk there.</summary>
    [Fact]
    public void A_coarse_mesh_under_a_fine_halftone_is_told_before_the_film_is_laid_with_figures()
    {
        var plan = PlanOf(new MeshFabric(54, 64), new TypedNeeds(RulingLpi: 55));
        Assert.True(plan.Moire!.IsSeen);
        var caution = plan.Cautions[0];
        Assert.Equal(CautionLevel.Notice, caution.Level);
        Assert.Contains("55 lines/in (21.7 /cm) at 22.5°", caution.Text, StringComparison.Ordinal);
        Assert.Contains(plan.Notes, note => note.Text.Contains("angle is not known", StringComparison.Ordinal) && note.Ground == Ground.CommonPractice);
        Assert.NotNull(PlanDocument.Of(Whole(new MeshFabric(54, 64), new TypedNeeds(RulingLpi: 55)))["colours"]![0]!["moire"]!["visibilityAtWorst"]);
    }

    [Fact]
    public void What_is_advised_beats_less_than_what_is_planned()
    {
        double[] counts = [43, 54, 61, 77, 90];
        var told = 0;
        foreach (var count in counts)
        {
            var moire = PlanOf(new MeshFabric(count, 4000 / count), new TypedNeeds(RulingLpi: 60)).Moire!;
            foreach (var way in new[] { moire.Angle, moire.Ruling }.OfType<MoireChoice>())
            {
                told++;
                Assert.True(MoireSearch.AsAsked(way.Asked).VisibilityAtWorst < moire.AsPlanned.VisibilityAtWorst);
            }
        }

        Assert.True(told > 0);
    }

    /// <summary>Five threads to a line: the guidance's quietest.</summary>
    [Fact]
    public void A_fine_mesh_under_a_coarse_halftone_is_not_warned_of()
    {
        var plan = PlanOf(new MeshFabric(120, 34), new TypedNeeds(RulingLpi: 55));
        Assert.False(plan.Moire!.IsSeen);
        Assert.DoesNotContain(plan.Cautions, caution => caution.Text.Contains("beats", StringComparison.Ordinal));
    }

    [Fact]
    public void Line_work_has_no_moire() => Assert.Null(PlanOf(new MeshFabric(61, 64), new TypedNeeds(FinestLineUm: 500)).Moire);

    [Fact]
    public void A_films_own_angle_is_taken()
    {
        var film = new FilmMeasurement
        {
            File = "a.tif", WidthPx = 1000, HeightPx = 1000, Dpi = 600, CoveragePercent = 20, Components = new FilmCounts(10, 1), Specks = new FilmCounts(0, 0),
            ImageWidths = [],
            Halftones = [new HalftoneZone { XMm = 1, YMm = 1, WidthMm = 20, HeightMm = 20, RulingLpi = 55, AngleDegrees = 44.9, TonePercentMin = 5, TonePercentMax = 90, CutDots = 0 }],
        };
        var plan = Planner.Plan(
            new Job { Name = "Try", Run = 100, Date = new DateOnly(2026, 11, 25), Colours = [new JobColour { Name = "Black", Ink = InkKind.Plastisol, Film = film }] },
            new Shop { Meshes = [new MeshFabric(77, 55)] });
        Assert.Equal(44.9, plan.Colours[0].Moire!.AsPlanned.AngleDegrees);
        Assert.False(plan.Colours[0].Moire!.AngleAssumed);
    }

    private static ColourPlan PlanOf(MeshFabric mesh, TypedNeeds needs) => Whole(mesh, needs).Colours[0];

    private static StencilPlan Whole(MeshFabric mesh, TypedNeeds needs) => Planner.Plan(
        new Job { Name = "Try", Run = 100, Date = new DateOnly(2026, 11, 25), Colours = [new JobColour { Name = "Black", Ink = InkKind.Plastisol, Needs = needs }] },
        new Shop { Meshes = [mesh] });
}
