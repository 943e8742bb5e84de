using Microsoft.EntityFrameworkCore;

namespace Silkwright.Records.Films;

internal static class FilmTables
{
    public static void Shape(ModelBuilder model)
    {
        _ = model.Entity<StoredFilm>().HasKey(f => f.Hash);
        var measurement = model.Entity<StoredMeasurement>();
        _ = measurement.HasKey(m => new { m.FilmHash, m.Options, m.MeasuringVersion });
        _ = measurement.HasOne<StoredFilm>().WithMany().HasForeignKey(m => m.FilmHash).OnDelete(DeleteBehavior.Restrict);
    }
}
