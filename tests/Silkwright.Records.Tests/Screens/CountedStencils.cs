using Silkwright.Emulsion;
using Silkwright.Exposure;
using Silkwright.Records.Screens;
using Silkwright.Records.Shops;
using Silkwright.Records.Tests.Store;
using static Silkwright.Records.Tests.Store.TemporaryStore;

namespace Silkwright.Records.Tests.Screens;

/// <summary>What the record of screens teaches plans of stencil lives.</summary>
public sealed class CountedStencils
{
    private const string TwoInks = """{"name": "Harbour", "run": 400, "colours": [{"name": "Wave", "ink": "waterBased"}, {"name": "Gull", "ink": "plastisol"}]}""";

    [Theory]
    [InlineData(Database.Sqlite)]
    [InlineData(Database.Postgres)]
    public async Task A_screen_that_printed_counts_broken_or_sound_so_far(Database database)
    {
        await using var temporary = await OpenWithJobAsync(database);
        var store = temporary.Store;
        await PrintAsync(temporary, new JobAssigned("harbour", "Wave"), new ScreenPrinted(240), new ScreenPrinted(170), new ScreenEnded(EndReason.Broke, "pinholes"));
        await PrintAsync(temporary, new JobAssigned("harbour", "gull"), new ScreenPrinted(90));

        var counted = await CountedScreens.OfShopAsync(store, "quay", Cancel);

        Assert.Equal(
            [("Wren 47", InkKind.WaterBased, 410, true), ("Wren 47", InkKind.Plastisol, 90, false)],
            counted.OrderByDescending(reading => reading.Impressions).Select(reading => (reading.EmulsionId, reading.Ink, reading.Impressions, reading.Broke)));
    }

    [Fact]
    public async Task A_screen_says_nothing_where_the_ink_that_wore_it_is_not_known()
    {
        await using var temporary = await OpenWithJobAsync(Database.Sqlite);
        await PrintAsync(temporary, new JobAssigned("harbour"), new ScreenPrinted(90));
        await PrintAsync(temporary, new JobAssigned("harbour", "Wave"), new ScreenPrinted(90, "another-job"));
        await PrintAsync(temporary, new JobAssigned("harbour", "Wave"), new ScreenPrinted(90), new JobAssigned("harbour", "Gull"), new ScreenPrinted(30));
        await PrintAsync(temporary, new JobAssigned("harbour", "Wave"));

        Assert.Empty(await CountedScreens.OfShopAsync(temporary.Store, "quay", Cancel));
    }

    [Fact]
    public async Task A_kept_shop_learns_from_its_document_and_from_its_screens()
    {
        await using var temporary = await OpenWithJobAsync(Database.Sqlite);
        var store = temporary.Store;
        var revision = await store.Shops.SaveAsync(
            "quay",
            """{"name": "Quay", "emulsions": [{"id": "Wren 47", "family": "photopolymer"}], "readings": {"runs": [{"emulsion": "Wren 47", "ink": "plastisol", "impressions": 7000, "broke": false}]}}""",
            "Ines", "Counted", cancel: Cancel);
        await PrintAsync(temporary, new JobAssigned("harbour", "Wave"), new ScreenPrinted(410));

        Assert.Equal([7000, 410], (await KeptShop.OfAsync(store, revision, Cancel)).RunReadings.Select(reading => reading.Impressions));
    }

    private static async Task<TemporaryStore> OpenWithJobAsync(Database database)
    {
        var temporary = await OpenWithShopAsync(database);
        _ = await temporary.Store.Jobs.SaveAsync("harbour", TwoInks, "Ines", "New", cancel: Cancel);
        return temporary;
    }

    private static async Task PrintAsync(TemporaryStore temporary, params ScreenFact[] facts)
    {
        var screen = await temporary.Store.Screens.AddAsync(new ScreenDraft { Frame = "Q-1", Mesh = new(77, 48), Person = "Ines" }, Cancel);
        foreach (var fact in (ScreenFact[])[new ScreenCoated("Wren 47"), new ScreenExposed(40, ExposureCount.Seconds), .. facts])
        {
            temporary.Time.Pass(TimeSpan.FromMinutes(20));
            _ = await temporary.Store.Screens.AppendAsync(screen.Id, new EntryDraft { Fact = fact, Person = "Bram" }, Cancel);
        }
    }
}
