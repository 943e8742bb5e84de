using System.Text.Json;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Records.Demo;
using Silkwright.Records.Jobs;
using Silkwright.Records.Screens;
using Silkwright.Records.Tests.Store;
using Silkwright.Stock;
using static Silkwright.Records.Tests.Store.TemporaryStore;

namespace Silkwright.Records.Tests.Demo;

public sealed class DemonstrationShop
{
    private static readonly DateOnly JobsDay = new(2026, 11, 25);

    private static string Folder => Path.Combine(AppContext.BaseDirectory, "demo");

    [Theory]
    [InlineData(Database.Sqlite)]
    [InlineData(Database.Postgres)]
    public async Task It_loads_once_and_loading_again_changes_nothing(Database database)
    {
        await using var temporary = await OpenAsync(database);
        var store = temporary.Store;
        var first = await DemoShop.LoadAsync(store, Folder, Cancel);
        temporary.Time.Pass(TimeSpan.FromDays(3));
        var second = await DemoShop.LoadAsync(store, Folder, Cancel);

        Assert.Equal((6, 5), (first.Jobs, first.Screens));
        Assert.Equal((6, 5), (second.Jobs, second.Screens));
        Assert.Equal(DemoShop.ShopKey, await store.Shops.DefaultKeyAsync(Cancel));
        _ = Assert.Single(await store.Shops.HistoryAsync(DemoShop.ShopKey, Cancel));
        Assert.Equal(DemoShop.Loader, Assert.Single(await store.Catalogues.HistoryAsync(Cancel)).SavedBy);
        Assert.All(await store.Jobs.ListAsync(cancel: Cancel), job => Assert.Equal(1, job.Revision));
        var screens = await store.Screens.ListAsync(cancel: Cancel);
        Assert.Equal([ScreenStage.Reclaimed, ScreenStage.Broken, ScreenStage.Stored, ScreenStage.Dry, ScreenStage.Dry], screens.Select(s => s.Story.Stage));
        Assert.Equal([10, 11, 11, 4, 4], screens.Select(s => s.Events.Count));
        Assert.Contains(screens[4].Story.LongWaits, w => w is { After: ScreenEventKind.DryOut, Over: false });
    }

    [Fact]
    public async Task What_somebody_changed_stays_as_they_left_it()
    {
        await using var temporary = await OpenAsync();
        var store = temporary.Store;
        _ = await DemoShop.LoadAsync(store, Folder, Cancel);
        _ = await store.Jobs.SetStateAsync("left-chest", JobState.Done, "Ruth", "Shipped", Cancel);
        _ = await store.Shops.SaveAsync(DemoShop.ShopKey, """{"name":"Ours"}""", "Ruth", "Our own shop", cancel: Cancel);
        _ = await DemoShop.LoadAsync(store, Folder, Cancel);
        Assert.Equal(JobState.Done, (await store.Jobs.CurrentAsync("left-chest", Cancel))?.State);
        Assert.Equal("""{"name":"Ours"}""", (await store.Shops.CurrentAsync(cancel: Cancel))?.Text);
    }

    [Fact]
    public async Task Films_drawn_later_are_taken_in_by_the_next_load()
    {
        await using var temporary = await OpenAsync();
        var copy = Directory.CreateTempSubdirectory("silkwright-demo-").FullName;
        foreach (var file in Directory.GetFiles(Folder, "*.json", SearchOption.AllDirectories))
        {
            var target = Path.Combine(copy, Path.GetRelativePath(Folder, file));
            _ = Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }

        var before = await DemoShop.LoadAsync(temporary.Store, copy, Cancel);
        Assert.Equal(9, before.FilmsMissing.Count);
        foreach (var missing in before.FilmsMissing)
        {
            _ = Directory.CreateDirectory(Path.GetDirectoryName(missing)!);
            await File.WriteAllTextAsync(missing, missing, Cancel);
        }

        var after = await DemoShop.LoadAsync(temporary.Store, copy, Cancel);
        Assert.Empty(after.FilmsMissing);
        Assert.Equal(9, (await temporary.Store.Films.ListAsync(Cancel)).Count);
        Assert.Equal(4, (await temporary.Store.Jobs.FilmHashesAsync("lantern-walk", Cancel)).Count);
        Directory.Delete(copy, recursive: true);
    }

    [Fact]
    public async Task A_load_that_was_cut_short_goes_on_where_it_stopped()
    {
        await using var temporary = await OpenAsync();
        using var cut = new CancellationTokenSource();
        var load = DemoShop.LoadAsync(temporary.Store, Folder, cut.Token);
        while (!load.IsCompleted && (await temporary.Store.Screens.ListAsync(cancel: Cancel)).Count < 3)
            await Task.Yield();
        await cut.CancelAsync();
        try
        {
            _ = await load;
        }
        catch (OperationCanceledException)
        {
            // what was asked for, unless it was faster
        }

        temporary.Time.Pass(TimeSpan.FromDays(2));
        _ = await DemoShop.LoadAsync(temporary.Store, Folder, Cancel);
        Assert.Equal([10, 11, 11, 4, 4], (await temporary.Store.Screens.ListAsync(cancel: Cancel)).Select(s => s.Events.Count));
    }

    [Fact]
    public async Task A_folder_without_a_demonstration_is_a_problem()
    {
        await using var temporary = await OpenAsync();
        _ = await Assert.ThrowsAsync<InputProblemException>(() => DemoShop.LoadAsync(temporary.Store, temporary.Store.Folder.Path, Cancel));
    }

    [Fact]
    public async Task The_documents_read_agree_with_each_other_and_say_that_they_are_invented()
    {
        var shop = ShopReader.Read(await File.ReadAllTextAsync(Path.Combine(Folder, "shop.json"), Cancel), "shop.json");
        var emulsions = shop.Emulsions.Select(e => e.Id).ToHashSet();
        var lamps = shop.Lamps.Select(l => l.Id).ToHashSet();
        Assert.All(shop.CoatReadings, r => Assert.Contains(r.EmulsionId, emulsions));
        Assert.All(shop.ExposureReadings, r => Assert.Contains(r.EmulsionId, emulsions));
        Assert.All(shop.ExposureReadings, r => Assert.Contains(r.LampId!, lamps));
        Assert.All(shop.CoatReadings, r => Assert.Contains(r.TroughId, shop.Troughs.Select(t => t.Id)));
        Assert.All(shop.Frames, f => Assert.Contains(f.Mesh, shop.Meshes));

        var files = Directory.GetFiles(Folder, "*.json", SearchOption.AllDirectories);
        Assert.Equal(12, files.Length);
        foreach (var file in files)
        {
            using var document = JsonDocument.Parse(await File.ReadAllTextAsync(file, Cancel));
            Assert.True(document.RootElement.GetProperty("invented").GetBoolean(), file);
        }

        foreach (var file in Directory.GetFiles(Path.Combine(Folder, "jobs")))
            Assert.Equal(JobsDay, JobReader.Read(await File.ReadAllTextAsync(file, Cancel), file).Date);
    }

    [Fact]
    public async Task On_the_jobs_day_one_lot_is_over_and_one_is_near_its_end()
    {
        var shop = ShopReader.Read(await File.ReadAllTextAsync(Path.Combine(Folder, "shop.json"), Cancel), "shop.json");
        var lots = shop.Emulsions.ToDictionary(e => e.Id, e => PotLife.Of(e, JobsDay));
        Assert.Equal(["Sanderling 31"], lots.Where(l => l.Value.Over).Select(l => l.Key));
        Assert.InRange(lots["Plover 33"].DaysLeft!.Value, 0, 7);
    }
}
