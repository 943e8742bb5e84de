using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Silkwright.Estimates;
using Silkwright.Records.Shops;
using Silkwright.Records.Store;
using static Silkwright.Records.Tests.Store.TemporaryStore;

namespace Silkwright.Records.Tests.Store;

public sealed class StoreOpening
{
    // Values as PRAGMA reports them: sqlite.org, "PRAGMA Statements" (synchronous 2 = FULL).
    [Theory]
    [InlineData("PRAGMA journal_mode", "wal")]
    [InlineData("PRAGMA synchronous", "2")]
    [InlineData("PRAGMA foreign_keys", "1")]
    public async Task Every_connection_has_the_pragmas(string pragma, string expected)
    {
        await using var temporary = await TemporaryStore.OpenAsync();
        // Several at once, so that connections from the pool and new ones are both asked.
        var contexts = Enumerable.Range(0, 3).Select(_ => temporary.Store.CreateDbContext()).ToList();
        foreach (var context in contexts)
        {
            await context.Database.OpenConnectionAsync(Cancel);
            await using var command = context.Database.GetDbConnection().CreateCommand();
#pragma warning disable CA2100 // the text comes from the lines above
            command.CommandText = pragma;
#pragma warning restore CA2100
            Assert.Equal(expected, Convert.ToString(await command.ExecuteScalarAsync(Cancel), CultureInfo.InvariantCulture));
        }

        foreach (var context in contexts)
            await context.DisposeAsync();
    }

    [Theory]
    [InlineData(Database.Sqlite)]
    [InlineData(Database.Postgres)]
    public async Task The_database_refuses_a_row_that_refers_to_nothing(Database database)
    {
        await using var temporary = await TemporaryStore.OpenAsync(database);
        await using var context = temporary.Store.CreateDbContext();
        _ = context.Add(new ShopRevision { ShopKey = "nowhere", Revision = 1, Text = "{}", SavedAt = temporary.Time.Now, SavedBy = "Ines", Why = "try" });
        _ = await Assert.ThrowsAsync<DbUpdateException>(() => context.SaveChangesAsync(Cancel));
    }

    [Theory]
    [InlineData(Database.Sqlite)]
    [InlineData(Database.Postgres)]
    public async Task The_model_has_no_change_without_a_migration(Database database)
    {
        await using var temporary = await TemporaryStore.OpenAsync(database);
        await using var context = temporary.Store.CreateDbContext();
        Assert.False(context.Database.HasPendingModelChanges());
        Assert.NotEmpty(await context.Database.GetAppliedMigrationsAsync(Cancel));
        Assert.Empty(await context.Database.GetPendingMigrationsAsync(Cancel));
    }

    [Fact]
    public async Task Opening_twice_keeps_what_was_written()
    {
        await using var temporary = await TemporaryStore.OpenWithShopAsync();
        var again = await SilkwrightStore.OpenAsync(temporary.Store.Folder, temporary.Time, Cancel);
        Assert.Equal("""{"name":"Quay"}""", (await again.Shops.CurrentAsync(cancel: Cancel))?.Text);
    }

    [Fact]
    public async Task A_migration_lock_that_a_killed_program_left_does_not_block_the_next_start()
    {
        var folder = NewFolder();
        await using (var context = new RecordsContext(SilkwrightStore.SqliteOptions(folder)))
        {
            // The table and row that EF Core's SQLite provider makes while it migrates.
            _ = await context.Database.ExecuteSqlRawAsync(
                """
                CREATE TABLE "__EFMigrationsLock" ("Id" INTEGER NOT NULL PRIMARY KEY, "Timestamp" TEXT NOT NULL);
                INSERT INTO "__EFMigrationsLock" VALUES (1, '2026-11-25 07:00:00');
                """,
                Cancel);
        }

        using var patience = CancellationTokenSource.CreateLinkedTokenSource(Cancel);
        patience.CancelAfter(TimeSpan.FromSeconds(60));
        var store = await SilkwrightStore.OpenAsync(folder, new SettableTime(), patience.Token);
        Assert.Empty(await store.Shops.KeysAsync(Cancel));
        Remove(folder);
    }

    [Fact]
    public async Task Several_programs_may_open_a_new_folder_at_once()
    {
        var folder = NewFolder();
        var stores = await Task.WhenAll(
            Enumerable.Range(0, 4).Select(_ => Task.Run(() => SilkwrightStore.OpenAsync(folder, new SettableTime(), Cancel), Cancel)));
        foreach (var store in stores)
            Assert.Empty(await store.Shops.KeysAsync(Cancel));
        Remove(folder);
    }

    [Fact]
    public void A_folder_that_is_a_file_is_a_problem_with_a_remedy()
    {
        var file = Path.GetTempFileName();
        var fault = Assert.Throws<InputProblemException>(() => DataFolder.Open(file));
        File.Delete(file);
        var problem = Assert.Single(fault.Problems);
        Assert.Equal(file, problem.Where);
        Assert.Contains("--data", problem.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Services_give_the_same_store_and_its_parts()
    {
        await using var temporary = await TemporaryStore.OpenWithShopAsync();
        var services = new Microsoft.Extensions.DependencyInjection.ServiceCollection().AddSilkwrightRecords(temporary.Store.Folder);
        await using var provider = Microsoft.Extensions.DependencyInjection.ServiceCollectionContainerBuilderExtensions.BuildServiceProvider(services);
        var shops = (ShopRecords?)provider.GetService(typeof(ShopRecords));
        var store = (SilkwrightStore?)provider.GetService(typeof(SilkwrightStore));
        Assert.Same(store?.Shops, shops);
        Assert.Equal("quay", await shops!.DefaultKeyAsync(Cancel));
    }
}
