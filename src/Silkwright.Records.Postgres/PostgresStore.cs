using Microsoft.EntityFrameworkCore;
using Silkwright.Records.Store;

namespace Silkwright.Records.Postgres;

/// <summary>The same records on a PostgreSQL server, for many shops and several web processes. Films stay in the folder.</summary>
public static class PostgresStore
{
    /// <summary>A database on a server.</summary>
    /// <param name="connectionString">As Npgsql reads it: Host, Port, Database, Username and so on.</param>
    public static DbContextOptions<RecordsContext> Options(string connectionString) =>
        new DbContextOptionsBuilder<RecordsContext>()
            .UseNpgsql(connectionString, npgsql => npgsql.MigrationsAssembly(typeof(PostgresStore).Assembly))
            .Options;

    /// <summary>Opens the store on a server, making the database where it is missing, and brings it up to date.</summary>
    public static async Task<SilkwrightStore> OpenAsync(
        DataFolder folder, string connectionString, TimeProvider time, CancellationToken cancel = default)
    {
        var store = new SilkwrightStore(folder, Options(connectionString), time);
        await store.MigrateAsync(cancel);
        return store;
    }
}
