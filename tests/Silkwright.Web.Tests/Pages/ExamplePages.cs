using System.Text;
using Bunit;
using Silkwright.Web.Look;
using Silkwright.Web.Pages.Jobs.Sheet;
using Silkwright.Web.Tests.Samples;

namespace Silkwright.Web.Tests.Pages;

/// <summary>The example pages that docs/design-language.md speaks of: written to artifacts/look for a person to judge.</summary>
public sealed class ExamplePages : BunitContext
{
    [Theory]
    [InlineData(Station.Film)]
    [InlineData(Station.Mesh)]
    [InlineData(Station.Coat)]
    [InlineData(Station.Dry)]
    [InlineData(Station.Expose)]
    [InlineData(Station.Print)]
    public void Every_station_opens_with_its_drawing_its_figures_and_the_marks_of_their_ground(Station station)
    {
        var sheet = Render<BenchSheet>(p => p.Add(s => s.View, new SheetView(SamplePlans.Two, 0, station, UnitSystem.Metric, "/jobs/1")));

        Assert.Equal(6, sheet.FindAll(".line > .station").Count);
        Assert.Equal(station.ToString(), sheet.Find(".station[aria-current=step] .stop").TextContent.Trim()[1..].Trim());
        Assert.NotEmpty(sheet.FindAll(".detail svg.picture"));
        Assert.All(sheet.FindAll(".detail .facts tr"), row => Assert.NotNull(row.QuerySelector(".ground[data-ground]")));
        Keep($"sheet-{station}", sheet.Markup);
    }

    private static void Keep(string name, string body)
    {
        var root = AppContext.BaseDirectory;
        while (root is not null && !File.Exists(Path.Combine(root, "Silkwright.slnx")))
            root = Path.GetDirectoryName(root);
        Assert.NotNull(root);
        var folder = Directory.CreateDirectory(Path.Combine(root, "artifacts", "look")).FullName;
        foreach (var asset in new[] { "site.css", "plex-sans.woff2" })
            File.Copy(Path.Combine(root, "src", "Silkwright.Web", "wwwroot", asset), Path.Combine(folder, asset), overwrite: true);
        foreach (var theme in new[] { "", "safe" })
        {
            var page = $"<!doctype html><html lang=\"en\" class=\"{theme}\"><meta charset=\"utf-8\"><meta name=viewport content=\"width=device-width\"><title>{name}</title><link rel=\"stylesheet\" href=\"site.css\"><body><main><h1>Harbour choir, front</h1>{body}</main></body></html>";
            File.WriteAllText(Path.Combine(folder, $"{name}{(theme.Length > 0 ? "-" + theme : "")}.html"), page, Encoding.UTF8);
        }
    }
}
