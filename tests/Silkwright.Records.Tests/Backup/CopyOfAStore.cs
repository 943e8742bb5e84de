using Silkwright.Estimates;
using Silkwright.Mesh;
using Silkwright.Records.Backup;
using Silkwright.Records.Screens;
using Silkwright.Records.Store;
using Silkwright.Records.Tests.Store;
using static Silkwright.Records.Tests.Store.TemporaryStore;

namespace Silkwright.Records.Tests.Backup;

public sealed class CopyOfAStore
{
    [Fact]
    public async Task A_copy_made_while_somebody_writes_opens_and_holds_whole_records()
    {
        await using var temporary = await OpenWithShopAsync();
        var store = temporary.Store;
        using var content = new MemoryStream([1, 2, 3]);
        var film = await store.Films.AddAsync(content, "base.tif", "Ines", Cancel);
        var screen = await store.Screens.AddAsync(new ScreenDraft { Frame = "F-1", Mesh = new MeshFabric(61, 64), Person = "Ines" }, Cancel);
        using var stop = new CancellationTokenSource();
        var writing = Task.Run(
            async () =>
            {
                var count = 0;
                for (; count < 5 || !stop.IsCancellationRequested; count++)
                    _ = await store.Screens.AppendAsync(screen.Id, new EntryDraft { Fact = new ClimateRead(40), Person = "Ines" }, Cancel);
                return count;
            },
            Cancel);

        var target = Path.Combine(store.Folder.Path, "copy");
        var films = await StoreBackup.WriteAsync(store, target, Cancel);
        await stop.CancelAsync();
        var written = await writing;

        var copy = await SilkwrightStore.OpenAsync(DataFolder.Open(target), temporary.Time, Cancel);
        Assert.Equal([film], films);
        Assert.Equal([1, 2, 3], await File.ReadAllBytesAsync(copy.Films.PathOf(Assert.Single(await copy.Films.ListAsync(Cancel))), Cancel));
        var events = (await copy.Screens.ShowAsync(screen.Id, Cancel)).Events;
        Assert.InRange(events.Count, 0, written);
        Assert.Equal(Enumerable.Range(1, events.Count), events.Select(e => e.Sequence));
        Assert.True(File.Exists(Path.Combine(target, "films.json")));
        _ = await Assert.ThrowsAsync<InputProblemException>(() => StoreBackup.WriteAsync(store, target, Cancel));
    }

    [Fact]
    public async Task A_store_on_a_server_is_left_to_the_servers_tools()
    {
        await using var temporary = await OpenAsync(Database.Postgres);
        var target = Path.Combine(temporary.Store.Folder.Path, "copy");
        _ = await Assert.ThrowsAsync<InputProblemException>(() => StoreBackup.WriteAsync(temporary.Store, target, Cancel));
    }
}
