using Silkwright.Catalogue;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Records.Backup;
using Silkwright.Records.Store;
using Silkwright.Records.Tests.Store;
using static Silkwright.Records.Tests.Store.TemporaryStore;

namespace Silkwright.Records.Tests.Catalogues;

public sealed class RevisionsOfACatalogue
{
    private static readonly EmulsionCatalogue First = Read("Wagtail,solidsPercent,33%,datasheet,\"sheet, page 2\",2026-01-05");
    private static readonly EmulsionCatalogue Second = Read("Wagtail,solidsPercent,31.25,measuredHere,oven,2026-11-02\nDipper,family,diazo,datasheet,sheet,");

    [Theory]
    [InlineData(Database.Sqlite)]
    [InlineData(Database.Postgres)]
    public async Task The_latest_holds_with_who_and_when_and_the_earlier_ones_stay(Database database)
    {
        await using var temporary = await OpenAsync(database);
        var records = temporary.Store.Catalogues;
        Assert.Null(await records.CurrentAsync(Cancel));
        _ = await records.SaveAsync(First, "Ines", 0, Cancel);
        temporary.Time.Pass(TimeSpan.FromDays(1));
        _ = await records.SaveAsync(Second, " Bram ", 1, Cancel);

        var kept = (await records.CurrentAsync(Cancel))!;
        var history = await records.HistoryAsync(Cancel);

        Assert.Equal((2, "Bram"), (kept.Revision.Revision, kept.Revision.SavedBy));
        Assert.Equal(31.25, kept.Catalogue.Sheet("Wagtail")!.Line(CatalogueProperties.Solids)!.Used.Value.Number);
        Assert.Equal(["Bram", "Ines"], history.Select(r => r.SavedBy));
        Assert.Equal(TimeSpan.FromDays(1), history[0].SavedAt - history[1].SavedAt);
        Assert.True(CatalogueDifference.Between(First, CatalogueReader.Read(history[1].Text, "kept")).IsNone);
    }

    [Fact]
    public async Task The_same_values_again_are_no_new_revision_however_the_file_is_written()
    {
        await using var temporary = await OpenAsync();
        var records = temporary.Store.Catalogues;
        _ = await records.SaveAsync(First, "Ines", cancel: Cancel);
        var again = CatalogueReader.Read("date;source;ground;value;property;emulsion;note\n2026-01-05;\"sheet, page 2\";datasheet;33;solidsPercent;Wagtail;seen\n", "c.csv");
        Assert.Equal((1, "Ines"), ((await records.SaveAsync(again, "Bram", cancel: Cancel)).Revision, (await records.CurrentAsync(Cancel))!.Revision.SavedBy));
    }

    [Fact]
    public async Task Keeping_over_somebody_elses_is_refused_and_names_them()
    {
        await using var temporary = await OpenAsync();
        var records = temporary.Store.Catalogues;
        _ = await records.SaveAsync(First, "Ines", 0, Cancel);
        var fault = await Assert.ThrowsAsync<InputProblemException>(() => records.SaveAsync(Second, "Ruth", 0, Cancel));
        Assert.Contains("Ines", Assert.Single(fault.Problems).What, StringComparison.Ordinal);
        _ = await Assert.ThrowsAsync<InputProblemException>(() => records.SaveAsync(Second, " ", 1, Cancel));
        _ = Assert.Single(await records.HistoryAsync(Cancel));
    }

    [Theory]
    [InlineData(Database.Sqlite)]
    [InlineData(Database.Postgres)]
    public async Task Many_writers_at_once_lose_no_revision(Database database)
    {
        await using var temporary = await OpenAsync(database);
        var records = temporary.Store.Catalogues;
        _ = await Task.WhenAll(Enumerable.Range(20, 12).Select(
            n => Task.Run(() => records.SaveAsync(Read($"Wagtail,solidsPercent,{n},datasheet,sheet,"), $"Writer {n}", cancel: Cancel), Cancel)));
        Assert.Equal(Enumerable.Range(1, 12).Reverse(), (await records.HistoryAsync(Cancel)).Select(r => r.Revision));
    }

    [Fact]
    public async Task A_copy_of_the_store_has_it()
    {
        await using var temporary = await OpenAsync();
        _ = await temporary.Store.Catalogues.SaveAsync(Second, "Ines", cancel: Cancel);
        var target = Path.Combine(temporary.Store.Folder.Path, "copy");
        _ = await StoreBackup.WriteAsync(temporary.Store, target, Cancel);
        var copy = await SilkwrightStore.OpenAsync(DataFolder.Open(target), temporary.Time, Cancel);
        Assert.Equal((await temporary.Store.Catalogues.CurrentAsync(Cancel))!.Revision, (await copy.Catalogues.CurrentAsync(Cancel))!.Revision);
    }

    private static EmulsionCatalogue Read(string lines) =>
        CatalogueReader.Read($"emulsion,property,value,ground,source,date\n{lines}\n", "c.csv");
}
