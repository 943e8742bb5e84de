using Microsoft.EntityFrameworkCore;
using Silkwright.Estimates;
using Silkwright.Records.Store;
using static Silkwright.Records.Tests.Store.TemporaryStore;

namespace Silkwright.Records.Tests.Store;

/// <summary>A data folder that is not ours to open says why, and what is in it stays as it was.</summary>
public sealed class StoreThatCannotBeOpened
{
    [Fact]
    public async Task A_damaged_database_is_told_and_left_alone()
    {
        var folder = NewFolder();
        var noise = new byte[20_000];
        new Random(7).NextBytes(noise);
        await File.WriteAllBytesAsync(folder.DatabasePath, noise, Cancel);

        Assert.Contains("damaged", await RefusalAsync(folder), StringComparison.Ordinal);
        Assert.Equal(noise, await File.ReadAllBytesAsync(folder.DatabasePath, Cancel));
        Remove(folder);
    }

    [Fact]
    public async Task A_folder_where_the_database_should_be_is_told()
    {
        var folder = NewFolder();
        _ = Directory.CreateDirectory(folder.DatabasePath);
        Assert.Contains("cannot be read or written", await RefusalAsync(folder), StringComparison.Ordinal);
        Remove(folder);
    }

    [Fact]
    public async Task Another_programs_database_is_told_and_left_alone()
    {
        var folder = NewFolder();
        await using (var context = new RecordsContext(SilkwrightStore.SqliteOptions(folder)))
            _ = await context.Database.ExecuteSqlRawAsync("CREATE TABLE \"Films\" (\"Title\" TEXT)", Cancel);
        Assert.Contains("another program", await RefusalAsync(folder), StringComparison.Ordinal);
        Remove(folder);
    }

    [Fact]
    public async Task Records_of_a_newer_program_are_told_and_not_written_to()
    {
        await using var temporary = await OpenWithShopAsync();
        await using (var context = temporary.Store.CreateDbContext())
            _ = await context.Database.ExecuteSqlRawAsync("INSERT INTO \"__EFMigrationsHistory\" VALUES ('29990101000000_Later', '99.0.0')", Cancel);
        Assert.Contains("newer", await RefusalAsync(temporary.Store.Folder), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    [InlineData("a\0b")]
    public void A_folder_without_a_name_is_told(string path) => Assert.Throws<InputProblemException>(() => DataFolder.Open(path));

    [Fact]
    public void A_full_disk_is_told_and_a_failure_of_ours_is_not()
    {
        var folder = NewFolder();
        // ENOSPC is 28 on Linux (errno.h); .NET gives it as HResult.
        Assert.Contains("full", StoreFaults.Told(new InvalidOperationException("writing", new IOException("no space", 28)), folder)!.What, StringComparison.Ordinal);
        Assert.Null(StoreFaults.Told(new InvalidOperationException("ours"), folder));
        Remove(folder);
    }

    private static async Task<string> RefusalAsync(DataFolder folder)
    {
        var refusal = await Assert.ThrowsAsync<InputProblemException>(() => SilkwrightStore.OpenAsync(folder, new SettableTime(), Cancel));
        return Assert.Single(refusal.Problems).What;
    }
}
