using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Npgsql;
using Silkwright.Records.Postgres;
using Silkwright.Records.Store;

namespace Silkwright.Records.Tests.Store;

/// <summary>A real store in a folder of its own, gone afterwards.</summary>
internal sealed class TemporaryStore : IAsyncDisposable
{
    private TemporaryStore(SilkwrightStore store, SettableTime time) => (Store, Time) = (store, time);

    public SilkwrightStore Store { get; }

    public SettableTime Time { get; }

    public static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public static DataFolder NewFolder() => DataFolder.Open(Path.Combine(Path.GetTempPath(), $"silkwright-{Guid.NewGuid():N}"));

    /// <summary>An empty store.</summary>
    public static async Task<TemporaryStore> OpenAsync(Database database = Database.Sqlite)
    {
        var time = new SettableTime();
        var store = database == Database.Sqlite
            ? await SilkwrightStore.OpenAsync(NewFolder(), time, Cancel)
            : await PostgresStore.OpenAsync(NewFolder(), PostgresServer.NewConnectionString(), time, Cancel);
        return new TemporaryStore(store, time);
    }

    /// <summary>A store with one shop in it.</summary>
    public static async Task<TemporaryStore> OpenWithShopAsync(Database database = Database.Sqlite)
    {
        var temporary = await OpenAsync(database);
        _ = await temporary.Store.Shops.SaveAsync("quay", """{"name":"Quay"}""", "Ines", "First look round", cancel: Cancel);
        return temporary;
    }

    /// <summary>Removes a folder whose store is no longer used.</summary>
    public static void Remove(DataFolder folder)
    {
        using (var context = new RecordsContext(SilkwrightStore.SqliteOptions(folder)))
            SqliteConnection.ClearPool((SqliteConnection)context.Database.GetDbConnection());
        Directory.Delete(folder.Path, recursive: true);
    }

    public ValueTask DisposeAsync()
    {
        using (var context = Store.CreateDbContext())
        {
            if (context.Database.GetDbConnection() is NpgsqlConnection postgres)
                NpgsqlConnection.ClearPool(postgres);
        }

        Remove(Store.Folder);
        return ValueTask.CompletedTask;
    }
}
