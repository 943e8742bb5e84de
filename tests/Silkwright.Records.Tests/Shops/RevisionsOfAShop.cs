using Silkwright.Estimates;
using Silkwright.Records.Tests.Store;
using static Silkwright.Records.Tests.Store.TemporaryStore;

namespace Silkwright.Records.Tests.Shops;

public sealed class RevisionsOfAShop
{
    [Theory]
    [InlineData(Database.Sqlite)]
    [InlineData(Database.Postgres)]
    public async Task The_latest_revision_holds_and_the_earlier_ones_stay(Database database)
    {
        await using var temporary = await TemporaryStore.OpenWithShopAsync(database);
        var shops = temporary.Store.Shops;
        temporary.Time.Pass(TimeSpan.FromDays(1));
        _ = await shops.SaveAsync("quay", """{"name":"Quay","screensPerDay":9}""", "Bram", "Counted last week", cancel: Cancel);

        var history = await shops.HistoryAsync("quay", Cancel);

        Assert.Equal([2, 1], history.Select(r => r.Revision));
        Assert.Equal(["Bram", "Ines"], history.Select(r => r.SavedBy));
        Assert.Equal("""{"name":"Quay"}""", history[1].Text);
        Assert.Equal(TimeSpan.FromDays(1), history[0].SavedAt - history[1].SavedAt);
        Assert.Equal(history[0], await shops.CurrentAsync(cancel: Cancel));
    }

    [Fact]
    public async Task The_same_text_again_is_no_new_revision()
    {
        await using var temporary = await TemporaryStore.OpenWithShopAsync();
        var again = await temporary.Store.Shops.SaveAsync("quay", """{"name":"Quay"}""", "Bram", "Pressed save twice", cancel: Cancel);
        Assert.Equal(1, again.Revision);
        _ = Assert.Single(await temporary.Store.Shops.HistoryAsync("quay", Cancel));
    }

    [Fact]
    public async Task Saving_over_somebody_elses_change_is_refused_and_names_them()
    {
        await using var temporary = await TemporaryStore.OpenWithShopAsync();
        var shops = temporary.Store.Shops;
        _ = await shops.SaveAsync("quay", """{"name":"A"}""", "Bram", "First", basedOn: 1, cancel: Cancel);
        var fault = await Assert.ThrowsAsync<InputProblemException>(
            () => shops.SaveAsync("quay", """{"name":"B"}""", "Ruth", "Second", basedOn: 1, cancel: Cancel));
        Assert.Contains("Bram", Assert.Single(fault.Problems).What, StringComparison.Ordinal);
        Assert.Equal("""{"name":"A"}""", (await shops.CurrentAsync("quay", Cancel))?.Text);
    }

    [Theory]
    [InlineData(Database.Sqlite)]
    [InlineData(Database.Postgres)]
    public async Task Many_writers_at_once_lose_no_revision(Database database)
    {
        await using var temporary = await TemporaryStore.OpenWithShopAsync(database);
        var shops = temporary.Store.Shops;
        _ = await Task.WhenAll(Enumerable.Range(0, 12).Select(
            n => Task.Run(() => shops.SaveAsync("quay", $$"""{"name":"{{n}}"}""", $"Writer {n}", "At once", cancel: Cancel), Cancel)));
        var history = await shops.HistoryAsync("quay", Cancel);
        Assert.Equal(Enumerable.Range(1, 13).Reverse(), history.Select(r => r.Revision));
        Assert.Equal(13, history.Select(r => r.SavedBy).Distinct().Count());
    }

    [Fact]
    public async Task The_first_shop_is_the_default_until_another_is_chosen()
    {
        await using var temporary = await TemporaryStore.OpenWithShopAsync();
        var shops = temporary.Store.Shops;
        _ = await shops.SaveAsync("mill", """{"name":"Mill"}""", "Ines", "A second shop", cancel: Cancel);
        Assert.Equal("quay", await shops.DefaultKeyAsync(Cancel));
        await shops.MakeDefaultAsync("mill", "Ines", Cancel);
        Assert.Equal("mill", (await shops.CurrentAsync(cancel: Cancel))?.ShopKey);
        Assert.Equal(["mill", "quay"], await shops.KeysAsync(Cancel));
        _ = await Assert.ThrowsAsync<InputProblemException>(() => shops.MakeDefaultAsync("nowhere", "Ines", Cancel));
    }

    [Fact]
    public async Task All_faults_of_a_save_are_told_at_once_and_nothing_is_written()
    {
        await using var temporary = await TemporaryStore.OpenAsync();
        var fault = await Assert.ThrowsAsync<InputProblemException>(
            () => temporary.Store.Shops.SaveAsync("Not A Key", "{\n \"name\": oops }", " ", "", cancel: Cancel));
        Assert.Equal(4, fault.Problems.Count);
        Assert.Contains(fault.Problems, p => p.Where.Contains("line 2", StringComparison.Ordinal));
        Assert.All(fault.Problems, p => Assert.NotEmpty(p.Remedy));
        Assert.Empty(await temporary.Store.Shops.KeysAsync(Cancel));
    }
}
