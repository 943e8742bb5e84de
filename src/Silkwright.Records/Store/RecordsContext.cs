using Microsoft.EntityFrameworkCore;
using Silkwright.Records.Films;
using Silkwright.Records.Jobs;
using Silkwright.Records.Screens;
using Silkwright.Records.Shops;

namespace Silkwright.Records.Store;

/// <summary>The tables. A feature's folder says what its tables hold and how they are written.</summary>
public sealed class RecordsContext(DbContextOptions<RecordsContext> options) : DbContext(options)
{
    public DbSet<ShopEntry> Shops => Set<ShopEntry>();

    public DbSet<ShopRevision> ShopRevisions => Set<ShopRevision>();

    public DbSet<JobRevision> JobRevisions => Set<JobRevision>();

    public DbSet<JobFilm> JobFilms => Set<JobFilm>();

    public DbSet<StoredFilm> Films => Set<StoredFilm>();

    public DbSet<StoredMeasurement> FilmMeasurements => Set<StoredMeasurement>();

    public DbSet<Screen> Screens => Set<Screen>();

    public DbSet<ScreenEvent> ScreenEvents => Set<ScreenEvent>();

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        ShopTables.Shape(modelBuilder);
        JobTables.Shape(modelBuilder);
        FilmTables.Shape(modelBuilder);
        ScreenTables.Shape(modelBuilder);
        if (Database.IsSqlite())
            KeepInstantsAsTicks(modelBuilder);
    }

    private static void KeepInstantsAsTicks(ModelBuilder modelBuilder)
    {
        var instants = modelBuilder.Model.GetEntityTypes()
            .SelectMany(entity => entity.GetProperties())
            .Where(property => property.ClrType == typeof(DateTimeOffset));
        foreach (var instant in instants)
            instant.SetValueConverter(new UtcTicks());
    }
}
