using Silkwright.Exposure;
using Silkwright.Mesh;
using Silkwright.Records.Screens;
using Silkwright.Records.Tests.Store;

namespace Silkwright.Records.Tests.Screens;

public sealed class RecordOfAScreen
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_screen_goes_through_its_whole_life_and_tells_it_in_order()
    {
        await using var temporary = await TemporaryStore.OpenAsync();
        var (store, time) = (temporary.Store, temporary.Time);
        _ = await store.Shops.SaveAsync("quay", "{}", "Ines", "first", cancel: Cancel);
        var screen = await store.Screens.AddAsync(
            new ScreenDraft { Frame = "F-14", Mesh = new MeshFabric(120, 34, Dyed: true), MeshLot = "M7", Person = "Ines" }, Cancel);
        ScreenFact[] facts =
        [
            new ScreenDegreased(), new ScreenCoated("wren-47", "W-1"), new DryingBegun("cabinet"), new ClimateRead(38, 30), new DryingEnded(),
            new ScreenExposed(40, ExposureCount.Seconds, 7), new ScreenChecked(CheckResult.Good), new JobAssigned("lantern-walk", "ember"),
            new ScreenPrinted(300), new ScreenPrinted(250), new ScreenEnded(EndReason.Broke, "pinholes along the blade's end"),
        ];
        foreach (var fact in facts)
        {
            time.Pass(TimeSpan.FromMinutes(15));
            _ = await store.Screens.AppendAsync(screen.Id, new EntryDraft { Fact = fact, Person = "Tom" }, Cancel);
        }

        var record = await store.Screens.ShowAsync(screen.Id, Cancel);
        Assert.Equal("S-0001", record.Screen.Id);
        Assert.Equal(facts.Select(f => f.Kind), record.Events.Select(e => e.Kind));
        Assert.Equal(550, record.Story.Impressions);
        Assert.Equal(30, record.Story.DryMinutes);
        Assert.Equal(ScreenStage.Broken, record.Story.Stage);
        Assert.Equal(7, record.Story.Exposure?.SolidStep);
    }
}
