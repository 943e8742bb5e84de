using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Silkwright.Estimates;
using Silkwright.Records.Catalogues;
using Silkwright.Records.Coating;
using Silkwright.Records.Films;
using Silkwright.Records.Gauging;
using Silkwright.Records.Jobs;
using Silkwright.Records.Screens;
using Silkwright.Records.Shops;

namespace Silkwright.Records.Store;

/// <summary>A shop's records: the one object that the program opens at its start and keeps. Safe for many threads.</summary>
public sealed class SilkwrightStore : IDbContextFactory<RecordsContext>
{
    private readonly DbContextOptions<RecordsContext> options;

    /// <param name="folder">Holds the films, and the database where it is embedded.</param>
    /// <param name="options">Names the database; <see cref="SqliteOptions"/> for the embedded one.</param>
    /// <param name="time">The clock that stamps what is written.</param>
    public SilkwrightStore(DataFolder folder, DbContextOptions<RecordsContext> options, TimeProvider time)
    {
        this.options = options;
        Folder = folder;
        Time = time;
        Shops = new ShopRecords(this);
        Jobs = new JobRecords(this);
        Catalogues = new CatalogueRecords(this);
        Films = new FilmRecords(this);
        Screens = new ScreenRecords(this);
        Gauging = new GaugingRecords(this);
        CoatExperience = new ExperienceRecords(this);
    }

    public DataFolder Folder { get; }

    public TimeProvider Time { get; }

    public ShopRecords Shops { get; }

    public JobRecords Jobs { get; }

    public CatalogueRecords Catalogues { get; }

    public FilmRecords Films { get; }

    public ScreenRecords Screens { get; }

    public GaugingRecords Gauging { get; }

    public ExperienceRecords CoatExperience { get; }

    /// <summary>The embedded database of a folder.</summary>
    public static DbContextOptions<RecordsContext> SqliteOptions(DataFolder folder) =>
        new DbContextOptionsBuilder<RecordsContext>()
            .UseSqlite(new SqliteConnectionStringBuilder { DataSource = folder.DatabasePath }.ToString())
            .AddInterceptors(new SqlitePragmas())
            .Options;

    /// <summary>Opens the embedded store of a folder and brings it up to date.</summary>
    public static async Task<SilkwrightStore> OpenAsync(DataFolder folder, TimeProvider time, CancellationToken cancel = default)
    {
        var store = new SilkwrightStore(folder, SqliteOptions(folder), time);
        await store.MigrateAsync(cancel);
        return store;
    }

    /// <summary>Brings the database to this program's shape and sweeps what killed programs left half-received.</summary>
    /// <exception cref="InputProblemException">The database is damaged, another program's, or a newer program's.</exception>
    public async Task MigrateAsync(CancellationToken cancel = default)
    {
        try
        {
            await MigrateNowAsync(cancel);
        }
        catch (Exception fault) when (StoreFaults.ToldOnOpening(fault, Folder) is { } problem)
        {
            throw new InputProblemException(problem);
        }
    }

    /// <summary>A unit of work on the records. Dispose it soon: it holds a connection.</summary>
    public RecordsContext CreateDbContext() => new(options);

    private async Task MigrateNowAsync(CancellationToken cancel)
    {
        using var turn = await MigrationTurn.TakeAsync(Folder, cancel);
        _ = Films.SweepAbandoned();
        await using var context = CreateDbContext();
        var pending = await context.Database.GetPendingMigrationsAsync(cancel);
        var newer = (await context.Database.GetAppliedMigrationsAsync(cancel)).Except(context.Database.GetMigrations()).FirstOrDefault();
        if (newer is not null)
        {
            throw new InputProblemException(new Problem(
                $"The records were written by a newer Silkwright ({newer}).", Folder.Path, "Start that one, or name another folder with --data."));
        }

        if (!pending.Any())
            return;
        await turn.ForgetAbandonedLockAsync(context, cancel);
        await context.Database.MigrateAsync(cancel);
    }
}
