using Silkwright.Artwork;
using Silkwright.Emulsion;
using Silkwright.Mesh;
using Silkwright.Plans;

namespace Silkwright.Tests.Plans;

/// <summary>
/// What a mesh holds is common practice (a line of three threads, at least a pitch): 120/34 from 3 · 34 = 102 µm, 77/48 from 144 µm,
/// 61/64 from 192 µm, by hand.
/// </summary>
public class DetailCheckTests
{
    private static readonly MeshFabric Coarse = new(61, 64);
    private static readonly MeshFabric Middle = new(77, 48);
    private static readonly MeshFabric Fine = new(120, 34);

    private static FilmMeasurement Film(params double[] widthsUm) => new()
    {
        File = "film.tif",
        WidthPx = 14_400,
        HeightPx = 19_200,
        Dpi = 1200,
        CoveragePercent = 12,
        Components = new FilmCounts(10, 5),
        Specks = new FilmCounts(0, 0),
        FinestImage = new FinestFeature(widthsUm[0], [.. widthsUm.Select((um, i) => new FilmPlace(i * 10, 20, um))]),
        ImageWidths = [],
        Halftones = [],
    };

    private static ColourPlan Plan(Shop shop, JobColour colour) => Planner.Plan(
        new Job { Name = "job", Date = RandomShops.Today, Run = 300, Colours = [colour] }, shop).Colours[0];

    private static ColourPlan Plan(FilmMeasurement film, params MeshFabric[] meshes) =>
        Plan(new Shop { Meshes = meshes }, new JobColour { Name = "one", Ink = InkKind.WaterBased, Film = film });

    [Fact]
    public void What_no_mesh_holds_is_to_be_thickened_or_lost_and_does_not_choose_the_mesh()
    {
        var plan = Plan(Film(21, 170, 300), Coarse, Middle, Fine);
        Assert.Equal(Middle, plan.Mesh.Fabric);
        Assert.False(plan.Detail.Holds);
        var remedy = plan.Detail.Remedy!;
        Assert.Equal(144, remedy.ThickenToUm!.Value, 9);
        Assert.Equal(1, remedy.PlacesLost);
        Assert.Null(remedy.LeastCountPerCm);
        Assert.Contains("accept losing 1 place.", remedy.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_finer_mesh_is_named_where_one_is_woven()
    {
        var remedy = Plan(Film(90, 90, 300), Coarse, Fine).Detail.Remedy!;
        Assert.Equal(10_000.0 / 90, remedy.LeastCountPerCm!.Value, 6);
        Assert.Equal(30, remedy.ThickestThreadUm!.Value, 6);
        Assert.Equal(2, remedy.PlacesLost);
        Assert.Contains("112/cm or finer with a thread of 30 µm or thinner", remedy.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_mesh_that_holds_it_but_carries_no_frame_is_the_remedy()
    {
        var shop = new Shop
        {
            Meshes = [Coarse, Fine],
            Frames = [new Frame { InsideWidthMm = 530, InsideHeightMm = 740, Mesh = Coarse, Count = 3 }],
        };
        var plan = Plan(shop, new JobColour { Name = "one", Ink = InkKind.WaterBased, Film = Film(110, 300) });
        Assert.Equal(Coarse, plan.Mesh.Fabric);
        Assert.Equal(Fine, plan.Detail.Remedy!.Mesh);
    }

    [Fact]
    public void The_plan_tells_what_the_finest_places_cost()
    {
        var plan = Plan(Film(110, 120, 300), Middle, Fine);
        Assert.Equal(Fine, plan.Mesh.Fabric);
        Assert.True(plan.Detail.Holds);
        Assert.Null(plan.Detail.Remedy);
        Assert.Equal((Middle, 2), (plan.Detail.Coarser!.Mesh.Mesh.Fabric, plan.Detail.Coarser.Places));
        Assert.Contains(plan.Because, reason => reason.StartsWith("Without the 2 places finer than", StringComparison.Ordinal));
    }

    /// <summary>55 lines per inch: a tone of t % has dots of 25 400 / 55 · √(4 t / 100 π) µm; 120/34 holds 2 · 34 + 49.3 = 117 µm: 5.1 %.</summary>
    [Fact]
    public void Tones_whose_dots_a_mesh_loses_are_to_be_lifted_to_the_lightest_it_holds()
    {
        var zone = new HalftoneZone
        {
            XMm = 0, YMm = 0, WidthMm = 100, HeightMm = 100, RulingLpi = 55, AngleDegrees = 22.5, TonePercentMin = 3, TonePercentMax = 97,
            SmallestDotUm = 90, SmallestHoleUm = 95, CutDots = 0,
        };
        var film = Film(500) with { FinestImage = null, Halftones = [zone] };
        var remedy = Plan(film, Fine).Detail.Remedy!;
        Assert.Equal(5.1, remedy.LightestTonePercent!.Value, 1);
        Assert.Contains("Lift the lightest tone to 6 %", remedy.Sentence, StringComparison.Ordinal);
    }
}
