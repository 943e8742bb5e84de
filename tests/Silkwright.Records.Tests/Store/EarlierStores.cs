using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql;
using Silkwright.Contracts;
using Silkwright.Mesh;
using Silkwright.Records.Films;
using Silkwright.Records.Postgres;
using Silkwright.Records.Screens;
using Silkwright.Records.Store;
using static Silkwright.Records.Tests.Store.TemporaryStore;

namespace Silkwright.Records.Tests.Store;

/// <summary>A store that an earlier program wrote is carried over, every row of it.</summary>
public sealed class EarlierStores
{
    // SHA-256 of the bytes 1, 2, 3, by sha256sum.
    private const string HashOf123 = "039058c6f2c0cb492c533b0a4d14ef77cc0f78abccced5287d84a1a2011cfb81";

    // The tables of the first migration, by name, as an earlier program left them.
    private static readonly string[] Tables =
        ["Shops", "ShopRevisions", "DefaultShops", "JobRevisions", "JobFilms", "Films", "FilmMeasurements", "Screens", "ScreenEvents"];

    // What later migrations have added to them.
    private static readonly string[] LaterColumns = ["JobFilms.Page", "JobFilms.Dpi"];

    [Theory]
    [InlineData(Database.Sqlite, "20261125100131_Start")]
    [InlineData(Database.Postgres, "20261125101638_Start")]
    public async Task A_store_without_a_catalogue_is_carried_over_with_nothing_lost(Database database, string schema)
    {
        var folder = NewFolder();
        var options = database == Database.Sqlite ? SilkwrightStore.SqliteOptions(folder) : PostgresStore.Options(PostgresServer.NewConnectionString());
        var store = new SilkwrightStore(folder, options, new SettableTime());
        await using (var context = store.CreateDbContext())
            await context.GetService<IMigrator>().MigrateAsync(schema, Cancel);
        await FillAsync(store);
        var before = await RowsAsync(store);
        Assert.All(before, table => Assert.NotEmpty(table.Value));

        await store.MigrateAsync(Cancel);

        Assert.Equal(before, await RowsAsync(store));
        Assert.Equal(new FilmKey(HashOf123), (await store.Jobs.FilmsAsync("walk", Cancel))["base.tif"]);
        Assert.Null(await store.Catalogues.CurrentAsync(Cancel));
        var catalogue = CatalogueReader.Read("emulsion,property,value,ground,source,date\nWagtail,family,diazo,datasheet,sheet,\n", "c.csv");
        Assert.Equal(1, (await store.Catalogues.SaveAsync(catalogue, "Ines", 0, Cancel)).Revision);
        Assert.Equal(before, await RowsAsync(store));
        await using (var context = store.CreateDbContext())
        {
            if (context.Database.GetDbConnection() is NpgsqlConnection postgres)
                NpgsqlConnection.ClearPool(postgres);
        }

        Remove(folder);
    }

    private static async Task FillAsync(SilkwrightStore store)
    {
        _ = await store.Shops.SaveAsync("quay", """{"name":"Quay"}""", "Ines", "First look round", cancel: Cancel);
        _ = await store.Shops.SaveAsync("quay", """{"name":"Quay","screensPerDay":9}""", "Bram", "Counted", cancel: Cancel);
        var screen = await store.Screens.AddAsync(new ScreenDraft { Frame = "F-1", Mesh = new MeshFabric(61, 64), Person = "Ines" }, Cancel);
        _ = await store.Screens.AppendAsync(screen.Id, new EntryDraft { Fact = new ScreenDegreased(), Person = "Ines" }, Cancel);
        _ = await store.Jobs.SaveAsync("walk", """{"name":"Walk","dueDate":"2026-11-27"}""", "Ines", "New", cancel: Cancel);
        using var content = new MemoryStream([1, 2, 3]);
        var film = await store.Films.AddAsync(content, "base.tif", "Ines", Cancel);
        Assert.Equal(HashOf123, film.Hash);
        await using var context = store.CreateDbContext();

        // As the earlier program wrote it, which knew of no pages.
        _ = await context.Database.ExecuteSqlRawAsync(
            """INSERT INTO "JobFilms" ("JobId", "NameInJob", "Version", "FilmHash", "AttachedAt", "AttachedBy") VALUES ('walk', 'base.tif', 1, {0}, {1}, 'Ines')""",
            [film.Hash, context.Database.IsNpgsql() ? store.Time.GetUtcNow() : store.Time.GetUtcNow().Ticks],
            Cancel);
        _ = context.Add(new StoredMeasurement { FilmHash = film.Hash, Options = "-", MeasuringVersion = "1", Json = "{}", MeasuredAt = store.Time.GetUtcNow() });
        _ = await context.SaveChangesAsync(Cancel);
    }

    /// <summary>Every row of every table as text, in order.</summary>
    private static async Task<Dictionary<string, string[]>> RowsAsync(SilkwrightStore store)
    {
        await using var context = store.CreateDbContext();
        await context.Database.OpenConnectionAsync(Cancel);
        var tables = new Dictionary<string, string[]>();
        foreach (var table in Tables)
        {
            await using var command = context.Database.GetDbConnection().CreateCommand();
#pragma warning disable CA2100 // one of the names above
            command.CommandText = $"SELECT * FROM \"{table}\"";
#pragma warning restore CA2100
            await using var reader = await command.ExecuteReaderAsync(Cancel);
            var rows = new List<string>();
            while (await reader.ReadAsync(Cancel))
            {
                var row = Enumerable.Range(0, reader.FieldCount).Where(i => !LaterColumns.Contains($"{table}.{reader.GetName(i)}"));
                rows.Add(string.Join('|', row.Select(i => Convert.ToString(reader.GetValue(i), CultureInfo.InvariantCulture))));
            }

            tables.Add(table, [.. rows.Order(StringComparer.Ordinal)]);
        }

        return tables;
    }
}
