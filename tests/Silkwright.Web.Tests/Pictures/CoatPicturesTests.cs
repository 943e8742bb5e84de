using System.Globalization;
using AngleSharp.Dom;
using Bunit;
using Silkwright.Coating.Learning;
using Silkwright.Estimates;
using Silkwright.Web.Pictures;

namespace Silkwright.Web.Tests.Pictures;

/// <summary>What readings taught, read back off the drawings by their own axes.</summary>
public sealed class CoatPicturesTests : BunitContext
{
    [Fact]
    public void A_reading_stands_where_the_axes_say_and_one_outside_its_interval_has_another_shape()
    {
        var picture = Render<HeldReadings>(p => p.Add(c => c.Readings, [(5, new Estimate(6, 4, 8, Ground.Model)), (20, new Estimate(14, 11, 17, Ground.Model))]));
        var (across, up) = (Axis(picture, "middle", "x"), Axis(picture, "end", "y", BaselinePx));
        var dot = Assert.Single(picture.FindAll("circle.dot"));

        Assert.Equal(5, across(Number(dot, "cx")), 0.05);
        Assert.Equal(6, up(Number(dot, "cy")), 0.05);
        _ = Assert.Single(picture.FindAll("path.out"));
        var line = picture.Find("path.level").GetAttribute("d")!.Trim('M').Split('L').Select(end => end.Split(' ').Select(n => double.Parse(n, CultureInfo.InvariantCulture)).ToArray()).ToArray();
        Assert.All(line, end => Assert.Equal(across(end[0]), up(end[1]), 0.05));
        Assert.Contains("1 outside", picture.Find("svg").GetAttribute("aria-label")!, StringComparison.Ordinal);
    }

    [Fact]
    public void A_groups_own_mean_is_a_ring_joined_to_the_dot_it_is_drawn_to_with_its_readings()
    {
        CoatEffect[] effects = [new("operator", "Quay, Ada", 1.2, 0.5) { RawUm = 2, Readings = 4 }, new("trough", "Quay, round", -0.5, 0.5) { RawUm = -0.6, Readings = 30 }];
        var picture = Render<CoatGroups>(p => p.Add(c => c.Effects, effects).Add(c => c.Shop, "Quay"));
        var across = Axis(picture, "middle", "x");
        var (rings, dots) = (picture.FindAll("circle.raw"), picture.FindAll("circle.dot"));

        Assert.Equal([2.0, -0.6], rings.Select(ring => Math.Round(across(Number(ring, "cx")), 1)));
        Assert.Equal([1.2, -0.5], dots.Select(dot => Math.Round(across(Number(dot, "cx")), 1)));
        Assert.True(Number(rings[1], "r") > Number(rings[0], "r"));
        Assert.Equal(2, picture.FindAll("path.drawn").Count);
        Assert.Contains(picture.FindAll("text"), text => text.TextContent == "30");
    }

    [Fact]
    public async Task Standing_alone_the_pictures_are_one_well_formed_file()
    {
        var svg = await StandalonePicture.SvgAsync([("Read & said", typeof(HeldReadings), new Dictionary<string, object?> { ["Readings"] = new[] { (5.0, new Estimate(6, 4, 8, Ground.Model)) } })]);
        var file = System.Xml.Linq.XDocument.Parse(svg);

        Assert.Equal("http://www.w3.org/2000/svg", file.Root!.Name.NamespaceName);
        Assert.Contains("Read & said", file.Root.Value, StringComparison.Ordinal);
    }

    /// <summary>A label's text stands so far below the height it names.</summary>
    private const double BaselinePx = 5;

    /// <summary>The value at a place of an axis, by two of its labels.</summary>
    private static Func<double, double> Axis<T>(IRenderedComponent<T> picture, string anchor, string along, double below = 0)
        where T : Microsoft.AspNetCore.Components.IComponent
    {
        var labels = picture.FindAll($"text[text-anchor={anchor}]").Select(text => (At: Number(text, along) - below, Read: double.TryParse(text.TextContent.Replace("−", "-", StringComparison.Ordinal), NumberStyles.Float, CultureInfo.InvariantCulture, out var value) ? value : (double?)null))
            .Where(label => label.Read is not null).ToArray();
        var (from, to) = (labels[0], labels[^1]);
        return at => from.Read!.Value + ((at - from.At) / (to.At - from.At) * (to.Read!.Value - from.Read.Value));
    }

    private static double Number(IElement element, string name) => double.Parse(element.GetAttribute(name)!, CultureInfo.InvariantCulture);
}
