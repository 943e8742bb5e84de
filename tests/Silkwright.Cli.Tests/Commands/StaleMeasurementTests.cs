using System.Globalization;
using Silkwright.Artwork;
using Silkwright.Film.Measuring;
using Silkwright.Film.TestFilms;
using Silkwright.Records.Films;
using Silkwright.Records.Store;

namespace Silkwright.Cli.Tests.Commands;

/// <summary>What an earlier way of measuring left in a data folder is never shown again.</summary>
public sealed class StaleMeasurementTests : IDisposable
{
    /// <summary>Drawn 120 by 90 mm: 70 by 50 mm solid, so 32.4 % prints; an earlier program would have kept 99 %.</summary>
    private const string Outline = "M10 10H80V60H10Z";

    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task A_film_measured_by_an_earlier_way_is_measured_again()
    {
        var film = Path.Combine(folder.Path, "block.tif");
        FilmMaker.Draw(new FilmRecipe("block", 120, 90, 1200, [new FilmShape { Outline = Outline }]), film, null, Cancel);
        var job = folder.Write("job.json", """{ "run": 100, "colours": [ { "ink": "plastisol", "film": "block.tif" } ] }""");
        var data = Path.Combine(folder.Path, "data");
        var store = await SilkwrightStore.OpenAsync(DataFolder.Open(data), TimeProvider.System, Cancel);
        var kept = await store.Films.AddFileAsync(film, "Ines", Cancel);
        foreach (var earlier in Enumerable.Range(0, int.Parse(FilmMeasurer.Version, CultureInfo.InvariantCulture)))
            await store.Films.KeepMeasurementAsync(new MeasuringKey(kept.Hash, null, Negative: false, $"{earlier}"), Stale, Cancel);

        var run = await ShellRun.Of("plan", job, "--data", data, "--json");

        Assert.Equal(0, run.ExitCode);
        var measured = await store.Films.FindMeasurementAsync(new MeasuringKey(kept.Hash, null, Negative: false, FilmMeasurer.Version), Cancel);
        Assert.Equal(100.0 * 70 * 50 / (120 * 90), measured!.CoveragePercent, tolerance: 0.1);
        Assert.DoesNotContain("99.25", run.Output, StringComparison.Ordinal);
    }

    private static FilmMeasurement Stale => new()
    {
        File = "block.tif",
        WidthPx = 5669,
        HeightPx = 4252,
        Dpi = 1200,
        CoveragePercent = 99.25,
        Components = new FilmCounts(1, 1),
        Specks = new FilmCounts(0, 0),
        FinestImage = null,
        ImageWidths = [],
        Halftones = [],
        Remarks = [],
    };
}
