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

/// <summary>The tables. A feature's folder says what its tables hold and how they are written.</summary>
public sealed class RecordsContext(DbContextOptions<RecordsContext> options) : DbContext(options)
{
    public DbSet<ShopEntry> Shops => Set<ShopEntry>();

    public DbSet<ShopRevision> ShopRevisions => Set<ShopRevision>();

    public DbSet<JobRevision> JobRevisions => Set<JobRevision>();

    public DbSet<JobFilm> JobFilms => Set<JobFilm>();

    public DbSet<CatalogueRevision> CatalogueRevisions => Set<CatalogueRevision>();

    public DbSet<StoredFilm> Films => Set<StoredFilm>();

    public DbSet<StoredMeasurement> FilmMeasurements => Set<StoredMeasurement>();

    public DbSet<Screen> Screens => Set<Screen>();

    public DbSet<ScreenEvent> ScreenEvents => Set<ScreenEvent>();

    public DbSet<KeptReading> GaugeReadings => Set<KeptReading>();

    public DbSet<KeptExperience> CoatExperience => Set<KeptExperience>();

    /// <exception cref="Silkwright.Estimates.InputProblemException">A text holds what no database keeps as it is.</exception>
    public override Task<int> SaveChangesAsync(bool acceptAllChangesOnSuccess, CancellationToken cancellationToken = default)
    {
        var problems = new ProblemList();
        foreach (var entry in ChangeTracker.Entries().Where(e => e.State == EntityState.Added))
        {
            foreach (var property in entry.Properties.Where(p => p.CurrentValue is string text && !DocumentFaults.IsKeepable(text)))
                problems.Add("A text holds a null character or half a character.", property.Metadata.Name, "Type it again.");
        }

        problems.ThrowIfAny();
        return base.SaveChangesAsync(acceptAllChangesOnSuccess, cancellationToken);
    }

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        ShopTables.Shape(modelBuilder);
        JobTables.Shape(modelBuilder);
        CatalogueTables.Shape(modelBuilder);
        FilmTables.Shape(modelBuilder);
        ScreenTables.Shape(modelBuilder);
        GaugingTables.Shape(modelBuilder);
        CoatingTables.Shape(modelBuilder);
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
