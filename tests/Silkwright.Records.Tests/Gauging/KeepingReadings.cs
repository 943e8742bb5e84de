using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Gauging;
using Silkwright.Records.Shops;
using Silkwright.Records.Tests.Store;
using static Silkwright.Records.Tests.Store.TemporaryStore;

namespace Silkwright.Records.Tests.Gauging;

/// <summary>Gauge readings on record, on both databases.</summary>
public sealed class KeepingReadings
{
    private const string File =
        "screen,place,operator,trough,emulsion,mesh count,thread (um),strokes,date,coated (um),bare (um)\n" +
        "S-1,1,Ines,round,Wren 47,61,64,P S,2026-11-24,98.5,87\n" +
        "S-1,2,Ines,round,Wren 47,61,64,P S,2026-11-24,85.5,87\n" +
        "S-1,3,Ines,round,Wren 47,61,64,P S,2026-11-24,99.25,87\n";

    public static TheoryData<Database> Databases => [.. Enum.GetValues<Database>()];

    [Theory]
    [MemberData(nameof(Databases))]
    public async Task A_file_kept_twice_is_kept_once_and_read_back_as_it_was(Database database)
    {
        await using var temporary = await OpenWithShopAsync(database);
        var records = temporary.Store.Gauging;
        var file = GaugeReader.Read(File, "f.csv");
        var kept = await records.KeepFileAsync(file, "f.csv", "Ines", cancel: Cancel);
        var again = await records.KeepFileAsync(file, "renamed.csv", "Bram", cancel: Cancel);
        Assert.Equal([1, 2, 3], kept.Readings.Select(reading => reading.Number));
        Assert.Equal(kept.Readings, again.Readings);
        Assert.Equal((3, 0, 0, 3), (kept.New, kept.Before, again.New, again.Before));
        Assert.Equal(file.Entries, await records.EntriesAsync(cancel: Cancel));
        Assert.NotNull(kept.Readings[1].Flag);
        Assert.Null(kept.Readings[0].Flag);
    }

    [Theory]
    [MemberData(nameof(Databases))]
    public async Task A_withdrawn_reading_stays_on_record_and_counts_no_more(Database database)
    {
        await using var temporary = await OpenWithShopAsync(database);
        var records = temporary.Store.Gauging;
        _ = await records.KeepFileAsync(GaugeReader.Read(File, "f.csv"), "f.csv", "Ines", cancel: Cancel);
        await records.WithdrawAsync(2, "Bram", "the gauge stood on a thread", cancel: Cancel);
        Assert.Equal(2, (await records.EntriesAsync(cancel: Cancel)).Count);
        Assert.Equal(4, (await records.HistoryAsync(cancel: Cancel)).Count);
        var twice = await Assert.ThrowsAsync<InputProblemException>(() => records.WithdrawAsync(2, "Bram", "again", cancel: Cancel));
        Assert.Contains("already", twice.Message, StringComparison.Ordinal);
        await Assert.ThrowsAsync<InputProblemException>(() => records.WithdrawAsync(9, "Bram", "none", cancel: Cancel));
    }

    [Theory]
    [MemberData(nameof(Databases))]
    public async Task Two_tablets_writing_at_once_lose_nothing(Database database)
    {
        await using var temporary = await OpenWithShopAsync(database);
        var records = temporary.Store.Gauging;
        await Task.WhenAll(Enumerable.Range(0, 8).Select(i => records.KeepAsync([new GaugeEntry { EomUm = i }, new GaugeEntry { EomUm = i + 0.5 }], "page", "Ines", $"k{i}", cancel: Cancel)));
        Assert.Equal(16, (await records.EntriesAsync(cancel: Cancel)).Select(entry => entry.EomUm).Distinct().Count());
    }

    /// <summary>A gauge goes on writing into its file; a reading taken back may be kept again.</summary>
    [Fact]
    public async Task Of_a_file_that_has_grown_only_the_new_rows_are_kept()
    {
        await using var temporary = await OpenWithShopAsync();
        var records = temporary.Store.Gauging;
        _ = await records.KeepFileAsync(GaugeReader.Read(File, "f.csv"), "f.csv", "Ines", cancel: Cancel);
        var grown = await records.KeepFileAsync(GaugeReader.Read(File + "S-2,1,Ines,round,Wren 47,61,64,P S,2026-11-25,99,87\n", "f.csv"), "f.csv", "Ines", cancel: Cancel);
        Assert.Equal((1, 3), (grown.New, grown.Before));
        Assert.Equal(4, (await records.EntriesAsync(cancel: Cancel)).Count);
        await records.WithdrawAsync(1, "Bram", "by mistake", cancel: Cancel);
        Assert.Equal((1, 3), await records.KeepFileAsync(GaugeReader.Read(File + "S-2,1,Ines,round,Wren 47,61,64,P S,2026-11-25,99,87\nS-3,2,Ines,round,Wren 47,61,64,P S,2026-11-25,99,87\n", "f.csv"), "f.csv", "Ines", cancel: Cancel) is var last ? (last.New - 1, last.Before) : default);
    }

    [Fact]
    public async Task Readings_that_name_no_place_and_day_are_kept_whatever_they_read()
    {
        await using var temporary = await OpenWithShopAsync();
        var records = temporary.Store.Gauging;
        _ = await records.KeepFileAsync(GaugeReader.Read("screen,eom (um)\nS-1,12\nS-1,13\n", "f.csv"), "f.csv", "Ines", cancel: Cancel);
        Assert.Equal(2, (await records.KeepFileAsync(GaugeReader.Read("screen,eom (um)\nS-1,12\nS-1,14\n", "g.csv"), "g.csv", "Ines", cancel: Cancel)).New);
    }

    [Fact]
    public async Task Plans_for_the_shop_learn_from_coats_of_what_it_has()
    {
        await using var temporary = await OpenAsync();
        const string shop = """
            {"name":"Quay","meshes":[{"countPerCm":61,"threadUm":64,"dyed":true}],"troughs":[{"id":"round","edgeRadiusMm":1.5}],"emulsions":[{"id":"Wren 47","family":"photopolymer"}]}
            """;
        var revision = await temporary.Store.Shops.SaveAsync("quay", shop, "Ines", "First look round", cancel: Cancel);
        var file = GaugeReader.Read(File + "S-2,1,Ines,lent,Wren 47,61,64,P S,2026-11-25,99,87\nS-3,1,Ines,round,Other,61,64,P S,2026-11-25,99,87\n", "f.csv");
        _ = await temporary.Store.Gauging.KeepFileAsync(file, "f.csv", "Ines", cancel: Cancel);
        var reading = Assert.Single((await KeptShop.OfAsync(temporary.Store, revision, Cancel)).CoatReadings);
        // (11.5 − 1.5 + 12.25) / 3, by hand: the flagged place counts, for it was taken
        Assert.Equal(22.25 / 3, reading.EomUm, 1e-9);
        Assert.True(reading.Mesh.Dyed);
        Assert.Equal(("Wren 47", "round"), (reading.EmulsionId, reading.TroughId));
    }

    /// <summary>Records keep what was written; a plan takes both spellings as one hand, one trough and one coat.</summary>
    [Fact]
    public async Task Plans_take_a_hand_and_a_trough_as_one_by_any_spelling()
    {
        await using var temporary = await OpenAsync();
        const string shop = """
            {"name":"Quay","meshes":[{"countPerCm":61,"threadUm":64}],"troughs":[{"id":"round edge","edgeRadiusMm":1.5}],"emulsions":[{"id":"Wren 47","family":"photopolymer"}]}
            """;
        var revision = await temporary.Store.Shops.SaveAsync("quay", shop, "Ines", "First look round", cancel: Cancel);
        var file = GaugeReader.Read(
            "screen,place,operator,trough,emulsion,mesh count,thread (um),strokes,date,eom (um)\nS-1,1,Ines,round edge,Wren 47,61,64,P S,2026-11-24,11\nS-1,2,INES,Round  edge,wren 47,61,64,P S,2026-11-24,13\n", "f.csv");
        _ = await temporary.Store.Gauging.KeepFileAsync(file, "f.csv", "Ines", cancel: Cancel);
        Assert.Equal(["Ines", "INES"], (await temporary.Store.Gauging.EntriesAsync(cancel: Cancel)).Select(entry => entry.Operator));
        var reading = Assert.Single((await KeptShop.OfAsync(temporary.Store, revision, Cancel)).CoatReadings);
        Assert.Equal((12.0, "Ines", "round edge", "Wren 47"), (reading.EomUm, reading.Operator, reading.TroughId, reading.EmulsionId));
    }

    [Fact]
    public async Task Readings_without_a_person_or_without_any_are_refused()
    {
        await using var temporary = await OpenWithShopAsync();
        var fault = await Assert.ThrowsAsync<InputProblemException>(() => temporary.Store.Gauging.KeepAsync([], "page", " ", "k", cancel: Cancel));
        Assert.Equal(2, fault.Problems.Count);
    }
}
