using Microsoft.Data.Sqlite;
using Silkwright.Records.Store;

namespace Silkwright.Records.Tests.Store;

/// <summary>A real store in a folder of its own, gone afterwards.</summary>
internal sealed class TemporaryStore : IAsyncDisposable
{
    private TemporaryStore(SilkwrightStore store, SettableTime time) => (Store, Time) = (store, time);

    public SilkwrightStore Store { get; }

    public SettableTime Time { get; }

    public static async Task<TemporaryStore> OpenAsync()
    {
        var time = new SettableTime();
        var folder = DataFolder.Open(Path.Combine(Path.GetTempPath(), $"silkwright-{Guid.NewGuid():N}"));
        return new TemporaryStore(await SilkwrightStore.OpenAsync(folder, time, TestContext.Current.CancellationToken), time);
    }

    public ValueTask DisposeAsync()
    {
        using (var context = Store.CreateDbContext())
            SqliteConnection.ClearPool((SqliteConnection)Microsoft.EntityFrameworkCore.RelationalDatabaseFacadeExtensions.GetDbConnection(context.Database));
        Directory.Delete(Store.Folder.Path, recursive: true);
        return ValueTask.CompletedTask;
    }
}
