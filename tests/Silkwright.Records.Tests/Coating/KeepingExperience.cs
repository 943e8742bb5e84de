using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Records.Shops;
using Silkwright.Records.Tests.Store;
using static Silkwright.Records.Tests.Store.TemporaryStore;

namespace Silkwright.Records.Tests.Coating;

/// <summary>What other shops' readings taught, on record on both databases.</summary>
public sealed class KeepingExperience
{
    public static TheoryData<Database> Databases => [.. Enum.GetValues<Database>()];

    [Theory]
    [MemberData(nameof(Databases))]
    public async Task Experience_kept_twice_is_kept_once_and_plans_start_from_all_of_it(Database database)
    {
        await using var temporary = await OpenWithShopAsync(database);
        var records = temporary.Store.CoatExperience;
        var (kept, isNew) = await records.KeepAsync(File(1), "one.json", "Ines", cancel: Cancel);
        var (again, isNewAgain) = await records.KeepAsync(File(1), "renamed.json", "Bram", cancel: Cancel);
        _ = await records.KeepAsync(File(2), "two.json", "Ines", cancel: Cancel);
        Assert.Equal((true, false), (isNew, isNewAgain));
        Assert.Equal(kept, again);
        var shop = await KeptShop.OfAsync(temporary.Store, (await temporary.Store.Shops.CurrentAsync(cancel: Cancel))!, Cancel);
        Assert.Equal((24, 2), (shop.Experience!.Readings, shop.Experience.Parts.Count));
    }

    [Theory]
    [MemberData(nameof(Databases))]
    public async Task Withdrawn_experience_stays_on_record_and_teaches_no_more(Database database)
    {
        await using var temporary = await OpenWithShopAsync(database);
        var records = temporary.Store.CoatExperience;
        _ = await records.KeepAsync(File(1), "one.json", "Ines", cancel: Cancel);
        await records.WithdrawAsync(1, "Bram", "another climate", cancel: Cancel);
        Assert.Empty(await records.HeldAsync(cancel: Cancel));
        Assert.Equal(["one.json", "withdrawal"], (await records.HistoryAsync(cancel: Cancel)).Select(entry => entry.Source));
        Assert.Contains("already", (await Assert.ThrowsAsync<InputProblemException>(() => records.WithdrawAsync(1, "Bram", "again", cancel: Cancel))).Message, StringComparison.Ordinal);
        _ = await Assert.ThrowsAsync<InputProblemException>(() => records.WithdrawAsync(7, "Bram", "none", cancel: Cancel));
        Assert.True((await records.KeepAsync(File(1), "one.json", "Ines", cancel: Cancel)).IsNew);
    }

    [Fact]
    public async Task Experience_that_holds_what_is_kept_already_is_refused()
    {
        await using var temporary = await OpenWithShopAsync();
        _ = await temporary.Store.CoatExperience.KeepAsync(File(1), "one.json", "Ines", cancel: Cancel);
        var both = CoatExperienceDocument.Of(CoatExperienceQuestion.Together([("1", CoatExperienceReader.Read(File(1), "1")), ("2", CoatExperienceReader.Read(File(2), "2"))])!).ToJsonString();
        var fault = await Assert.ThrowsAsync<InputProblemException>(() => temporary.Store.CoatExperience.KeepAsync(both, "both.json", "Ines", cancel: Cancel));
        Assert.Contains("one.json", fault.Message, StringComparison.Ordinal);
        _ = await Assert.ThrowsAsync<InputProblemException>(() => temporary.Store.CoatExperience.KeepAsync(File(2), "two.json", " ", cancel: Cancel));
        _ = await Assert.ThrowsAsync<InputProblemException>(() => temporary.Store.CoatExperience.KeepAsync("{}", "none.json", "Ines", cancel: Cancel));
    }

    [Fact]
    public async Task What_a_shops_own_readings_taught_does_not_come_back_to_it()
    {
        await using var temporary = await OpenAsync();
        const string start = """{"name":"Quay","meshes":[{"countPerCm":61,"threadUm":64}],"emulsions":[{"id":"Wren 47","family":"photopolymer"}],"readings":{"coat":[""";
        var coats = Enumerable.Range(0, 12).Select(i => """{"emulsion":"Wren 47","mesh":{"countPerCm":61,"threadUm":64},"strokes":"P S","eomUm":""" + FormattableString.Invariant($"{8 + (0.3 * i):0.0}") + "}");
        var revision = await temporary.Store.Shops.SaveAsync("quay", start + string.Join(',', coats) + "]}}", "Ines", "First", cancel: Cancel);
        var own = CoatExperienceQuestion.Of(await KeptShop.OfAsync(temporary.Store, revision, Cancel), [("one.json", CoatExperienceReader.Read(File(1), "one.json"))], Cancel).Experience;
        var fault = await Assert.ThrowsAsync<InputProblemException>(() => temporary.Store.CoatExperience.KeepAsync(CoatExperienceDocument.Of(own).ToJsonString(), "all.json", "Ines", cancel: Cancel));
        Assert.Contains("own readings", fault.Message, StringComparison.Ordinal);
    }

    /// <summary>Experience of twelve invented readings.</summary>
    internal static string File(int seed)
    {
        var random = new Random(seed);
        var rows = Enumerable.Range(0, 12).Select(i => FormattableString.Invariant($"S{seed},A,t,Wren 47,40,61,64,{1 + (i % 2)},1,{8 + (8 * random.NextDouble()):0.0}\n"));
        var readings = CoatTable.Readings($"{string.Join(',', CoatTable.Columns)},eomUm\n{string.Concat(rows)}", "r.csv");
        return CoatExperienceDocument.Of(CoatExperienceQuestion.Answer(readings, [], [], Cancel).Experience).ToJsonString();
    }
}
