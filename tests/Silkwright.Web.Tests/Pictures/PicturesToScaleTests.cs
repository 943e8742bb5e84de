using System.Globalization;
using AngleSharp.Dom;
using Bunit;
using Silkwright.Estimates;
using Silkwright.Web.Look;
using Silkwright.Web.Pictures;
using Silkwright.Web.Tests.Samples;

namespace Silkwright.Web.Tests.Pictures;

/// <summary>What a picture shows is what the plan says: lengths read back off the drawing, in its own scale.</summary>
public sealed class PicturesToScaleTests : BunitContext
{
    private const double HundredthPx = 0.02;

    private static readonly SectionSizes Sizes = new(
        PitchUm: 100, ThreadUm: 40, FabricUm: 62, new Estimate(10, 8, 13, Ground.Model), OpeningUm: 150, new Estimate(20, 15, 26, Ground.Model));

    [Fact]
    public void A_thread_in_the_cross_section_is_as_thick_as_the_scale_bar_says()
    {
        var picture = Render<CrossSection>(p => p.Add(c => c.Sizes, Sizes).Add(c => c.Detailed, true));
        var pxPerUm = PxPerUm(picture);

        foreach (var thread in picture.FindAll("circle.warp"))
            Assert.Equal(40, 2 * Number(thread, "r") / pxPerUm, tolerance: 0.1);
    }

    [Fact]
    public void Neighbouring_threads_stand_a_pitch_apart()
    {
        var picture = Render<CrossSection>(p => p.Add(c => c.Sizes, Sizes).Add(c => c.Detailed, true));
        var centres = picture.FindAll("circle.warp").Select(t => Number(t, "cx")).Order().ToArray();

        Assert.True(centres.Length >= 4);
        Assert.All(centres.Zip(centres.Skip(1)), pair => Assert.Equal(100, (pair.Second - pair.First) / PxPerUm(picture), tolerance: 0.1));
    }

    [Fact]
    public void The_opening_and_the_ink_above_the_garment_have_the_plans_widths_and_heights()
    {
        var picture = Render<CrossSection>(p => p.Add(c => c.Sizes, Sizes).Add(c => c.Detailed, true));
        var pxPerUm = PxPerUm(picture);

        Assert.Equal(150, Number(picture.Find(".ink-fill"), "width") / pxPerUm, tolerance: 0.1);
        Assert.Equal(62 + 10, Number(picture.Find(".ink-fill"), "height") / pxPerUm, tolerance: 0.1);
        Assert.Equal(20, Number(picture.Find(".deposit"), "height") / pxPerUm, tolerance: 0.1);
    }

    [Fact]
    public void The_interval_of_the_emulsion_over_mesh_is_drawn_where_it_lies()
    {
        var geometry = SectionGeometry.Of(Sizes, 0, 0, 500, 5, 40);

        Assert.Equal(8, (geometry.StencilLowPx - geometry.FabricBottomPx) / geometry.PxPerUm, 9);
        Assert.Equal(10, (geometry.StencilBottomPx - geometry.FabricBottomPx) / geometry.PxPerUm, 9);
        Assert.Equal(13, (geometry.StencilHighPx - geometry.FabricBottomPx) / geometry.PxPerUm, 9);
    }

    [Fact]
    public void The_threads_fill_the_fabric_and_nothing_more()
    {
        var geometry = SectionGeometry.Of(Sizes, 0, 0, 500, 5, 40);

        Assert.Equal(geometry.FabricTopPx, geometry.Threads.Min(t => t.Y) - geometry.ThreadRadiusPx, 9);
        Assert.Equal(geometry.FabricBottomPx, geometry.Threads.Max(t => t.Y) + geometry.ThreadRadiusPx, 9);
    }

    [Fact]
    public void A_line_wider_than_the_view_is_drawn_as_one_edge_and_says_so()
    {
        var picture = Render<CrossSection>(p => p.Add(c => c.Sizes, Sizes with { OpeningUm = 5_000 }).Add(c => c.Detailed, true));

        Assert.Single(picture.FindAll("path.stencil"));
        Assert.Contains("wider than this view", picture.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void The_weave_and_the_dot_over_it_share_one_scale()
    {
        var picture = Render<MeshWeave>(p => p.Add(m => m.Mesh, SamplePlans.Mesh).Add(m => m.DotUm, 98));
        var pxPerUm = PxPerUm(picture);

        Assert.Equal(SamplePlans.ThreadUm, Number(picture.Find(".thread"), "stroke-width") / pxPerUm, tolerance: 0.1);
        Assert.Equal(98, 2 * Number(picture.Find("circle.detail"), "r") / pxPerUm, tolerance: 0.1);
    }

    [Theory]
    [InlineData(UnitSystem.Metric, "µm")]
    [InlineData(UnitSystem.Us, "mil")]
    public void The_scale_bar_speaks_the_readers_unit(UnitSystem read, string unit)
    {
        var picture = Render<MeshWeave>(p => p.Add(m => m.Mesh, SamplePlans.Mesh).Add(m => m.Read, read));

        Assert.EndsWith(unit, picture.Find(".scale-bar text").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_place_on_the_film_is_marked_where_it_is()
    {
        var marks = FilmMark.On(filmWidthMm: 300, widthPx: 600, [new(120, 80, 98), new(60, 200, 104)]);

        Assert.Equal((240, 160), (marks[0].X, marks[0].Y), new WithinHundredth());
        Assert.Equal((120, 400), (marks[1].X, marks[1].Y), new WithinHundredth());
    }

    [Fact]
    public void The_ends_of_an_interval_fall_at_the_chance_they_stand_for()
    {
        // An interval of 90 % leaves 5 % on either side, whatever its shape.
        var window = WindowGeometry.Of(SamplePlans.Whole.Exposure!, 0, 0, 100, 100);

        Assert.Equal(5, window.CuredPercent(window.Window.Least.Low), tolerance: 1e-6);
        Assert.Equal(50, window.CuredPercent(window.Window.Least.Value), tolerance: 1e-6);
        Assert.Equal(95, window.CuredPercent(window.Window.Least.High), tolerance: 1e-6);
        Assert.Equal(95, window.OpenPercent(window.Window.Most.Low), tolerance: 1e-6);
        Assert.Equal(5, window.OpenPercent(window.Window.Most.High), tolerance: 1e-6);
    }

    [Fact]
    public void A_wedge_step_is_the_exposure_that_0_15_density_asks_for()
    {
        // Common practice's wedge: two steps of 0.15 double the exposure (10^0.3 = 1.995).
        var steps = WindowGeometry.Of(SamplePlans.Whole.Exposure!, 0, 0, 100, 100).StepsFromAim().ToDictionary(s => s.Step, s => s.Amount);

        Assert.Equal(1.995, steps[2] / steps[0], tolerance: 0.001);
    }

    [Fact]
    public void The_parts_of_a_cost_bar_add_up_to_its_whole_in_their_order()
    {
        var cost = SamplePlans.Whole.Cost!;
        var parts = CostPart.Of(cost, longest: cost.Total.Value);

        Assert.Equal(["emulsion", "hands", "waste", "remakes"], parts.Select(p => p.Fill));
        Assert.Equal(1, parts[^1].From + parts[^1].Width, 9);
        Assert.All(parts.Zip(parts.Skip(1)), pair => Assert.Equal(pair.First.From + pair.First.Width, pair.Second.From, 9));
    }

    [Fact]
    public void The_five_grounds_have_five_shapes()
    {
        var shapes = Grounds.All.Select(g => Render<GroundMark>(p => p.Add(m => m.Ground, g)).Find("svg"))
            .Select(svg => string.Concat(svg.Children.Where(c => c.LocalName != "title").Select(c => c.OuterHtml)));

        Assert.Equal(Grounds.All.Count, shapes.Distinct().Count());
    }

    private static double PxPerUm<T>(IRenderedComponent<T> picture)
        where T : Microsoft.AspNetCore.Components.IComponent
    {
        var bar = picture.Find(".scale-bar path").GetAttribute("d")!;
        var lengthPx = double.Parse(bar.Split('h')[1].Split('v')[0], CultureInfo.InvariantCulture);
        var lengthUm = double.Parse(picture.Find(".scale-bar text").TextContent.Split(' ')[0], CultureInfo.InvariantCulture);
        return lengthPx / lengthUm;
    }

    private static double Number(IElement element, string attribute) =>
        double.Parse(element.GetAttribute(attribute)!, CultureInfo.InvariantCulture);

    private sealed class WithinHundredth : IEqualityComparer<(double X, double Y)>
    {
        public bool Equals((double X, double Y) a, (double X, double Y) b) => Math.Abs(a.X - b.X) < HundredthPx && Math.Abs(a.Y - b.Y) < HundredthPx;

        public int GetHashCode((double X, double Y) point) => 0;
    }
}
