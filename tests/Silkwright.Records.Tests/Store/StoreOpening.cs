using Microsoft.EntityFrameworkCore;
using Silkwright.Estimates;
using Silkwright.Records.Store;

namespace Silkwright.Records.Tests.Store;

public sealed class StoreOpening
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    // Values as PRAGMA reports them: sqlite.org, "PRAGMA Statements" (synchronous 2 = FULL).
    [Theory]
    [InlineData("journal_mode", "wal")]
    [InlineData("synchronous", "2")]
    [InlineData("foreign_keys", "1")]
    public async Task Every_connection_has_the_pragmas(string pragma, string expected)
    {
        await using var temporary = await TemporaryStore.OpenAsync();
        // Several at once, so that connections from the pool and new ones are both asked.
        var contexts = Enumerable.Range(0, 3).Select(_ => temporary.Store.CreateDbContext()).ToList();
        foreach (var context in contexts)
        {
            await context.Database.OpenConnectionAsync(Cancel);
            await using var command = context.Database.GetDbConnection().CreateCommand();
#pragma warning disable CA2100 // the pragma's name comes from the lines above
            command.CommandText = $"PRAGMA {pragma}";
#pragma warning restore CA2100
            Assert.Equal(expected, Convert.ToString(await command.ExecuteScalarAsync(Cancel), System.Globalization.CultureInfo.InvariantCulture));
        }

        foreach (var context in contexts)
            await context.DisposeAsync();
    }

    [Fact]
    public async Task The_model_has_no_change_without_a_migration()
    {
        await using var temporary = await TemporaryStore.OpenAsync();
        await using var context = temporary.Store.CreateDbContext();
        Assert.False(context.Database.HasPendingModelChanges());
        Assert.Empty(await context.Database.GetPendingMigrationsAsync(Cancel));
    }

    [Fact]
    public async Task Opening_twice_keeps_what_was_written()
    {
        await using var temporary = await TemporaryStore.OpenAsync();
        _ = await temporary.Store.Shops.SaveAsync("quay", """{"name":"Quay"}""", "Ines", "first", cancel: Cancel);
        var again = await SilkwrightStore.OpenAsync(temporary.Store.Folder, temporary.Time, Cancel);
        Assert.Equal("""{"name":"Quay"}""", (await again.Shops.CurrentAsync(cancel: Cancel))?.Text);
    }

    [Fact]
    public async Task A_migration_lock_that_a_killed_program_left_does_not_block_the_next_start()
    {
        var folder = DataFolder.Open(Path.Combine(Path.GetTempPath(), $"silkwright-{Guid.NewGuid():N}"));
        await using (var context = new RecordsContext(SilkwrightStore.SqliteOptions(folder)))
        {
            _ = await context.Database.ExecuteSqlRawAsync(
                """
                CREATE TABLE "__EFMigrationsLock" ("Id" INTEGER NOT NULL PRIMARY KEY, "Timestamp" TEXT NOT NULL);
                INSERT INTO "__EFMigrationsLock" VALUES (1, '2026-11-25 07:00:00');
                """,
                Cancel);
        }

        using var patience = CancellationTokenSource.CreateLinkedTokenSource(Cancel);
        patience.CancelAfter(TimeSpan.FromSeconds(30));
        var store = await SilkwrightStore.OpenAsync(folder, new SettableTime(), patience.Token);
        Assert.Empty(await store.Shops.KeysAsync(Cancel));
    }

    [Fact]
    public void A_folder_that_is_a_file_is_a_problem_with_a_remedy()
    {
        var file = Path.GetTempFileName();
        var fault = Assert.Throws<InputProblemException>(() => DataFolder.Open(file));
        File.Delete(file);
        Assert.Equal(file, Assert.Single(fault.Problems).Where);
        Assert.Contains("--data", fault.Problems[0].Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_programs_may_open_a_new_folder_at_once()
    {
        var folder = DataFolder.Open(Path.Combine(Path.GetTempPath(), $"silkwright-{Guid.NewGuid():N}"));
        var stores = await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => Task.Run(() => SilkwrightStore.OpenAsync(folder, new SettableTime(), Cancel))));
        Assert.All(stores, store => Assert.Empty(store.Shops.KeysAsync(Cancel).GetAwaiter().GetResult()));
    }
}
