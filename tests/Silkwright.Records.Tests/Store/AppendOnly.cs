using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Silkwright.Contracts;
using Silkwright.Gauging;
using Silkwright.Mesh;
using Silkwright.Records.Screens;
using Silkwright.Records.Store;
using static Silkwright.Records.Tests.Store.TemporaryStore;

namespace Silkwright.Records.Tests.Store;

/// <summary>What happened stays, even against raw SQL.</summary>
public sealed class AppendOnly
{
    public static TheoryData<Database, string, string> Rewritings()
    {
        var data = new TheoryData<Database, string, string>();
        foreach (var database in Enum.GetValues<Database>())
        {
            data.Add(database, "ScreenEvents", "Person");
            data.Add(database, "Screens", "Frame");
            data.Add(database, "ShopRevisions", "Text");
            data.Add(database, "DefaultShops", "ChosenBy");
            data.Add(database, "JobRevisions", "Text");
            data.Add(database, "JobFilms", "AttachedBy");
            data.Add(database, "CatalogueRevisions", "SavedBy");
            data.Add(database, "GaugeReadings", "RecordedBy");
            data.Add(database, "CoatExperience", "RecordedBy");
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Rewritings))]
    public async Task The_database_itself_refuses_to_change_or_remove_a_record(Database database, string table, string column)
    {
        await using var temporary = await TemporaryStore.OpenWithShopAsync(database);
        await FillAsync(temporary.Store);
        await using var context = temporary.Store.CreateDbContext();

        var change = await RefusalAsync(context, $"UPDATE \"{table}\" SET \"{column}\" = 'somebody else'");
        var removal = await RefusalAsync(context, $"DELETE FROM \"{table}\"");

        Assert.Contains("append-only", change.Message, StringComparison.Ordinal);
        Assert.Contains("append-only", removal.Message, StringComparison.Ordinal);
        Assert.Equal(1, await CountAsync(context, $"SELECT count(*) AS \"Value\" FROM \"{table}\" WHERE \"{column}\" <> 'somebody else'"));
    }

    private static Task<DbException> RefusalAsync(RecordsContext context, string sql) =>
        Assert.ThrowsAnyAsync<DbException>(() => context.Database.ExecuteSqlRawAsync(sql, Cancel));

    private static Task<int> CountAsync(RecordsContext context, string sql) =>
        context.Database.SqlQueryRaw<int>(sql).SingleAsync(Cancel);

    // One row in each of the tables.
    private static async Task FillAsync(SilkwrightStore store)
    {
        var screen = await store.Screens.AddAsync(new ScreenDraft { Frame = "F-1", Mesh = new MeshFabric(61, 64), Person = "Ines" }, Cancel);
        _ = await store.Screens.AppendAsync(screen.Id, new EntryDraft { Fact = new ScreenDegreased(), Person = "Ines" }, Cancel);
        _ = await store.Jobs.SaveAsync("walk", """{"name":"Walk"}""", "Ines", "New", cancel: Cancel);
        using var content = new MemoryStream([1, 2, 3]);
        var film = await store.Films.AddAsync(content, "base.tif", "Ines", Cancel);
        await store.Jobs.AttachFilmAsync("walk", "base.tif", film.Hash, "Ines", Cancel);
        var catalogue = CatalogueReader.Read("emulsion,property,value,ground,source,date\nWagtail,family,diazo,datasheet,sheet,\n", "c.csv");
        _ = await store.Catalogues.SaveAsync(catalogue, "Ines", cancel: Cancel);
        _ = await store.Gauging.KeepAsync([new GaugeEntry { EomUm = 12 }], "page", "Ines", "k", cancel: Cancel);
        _ = await store.CoatExperience.KeepAsync(Coating.KeepingExperience.File(1), "e.json", "Ines", cancel: Cancel);
    }
}
