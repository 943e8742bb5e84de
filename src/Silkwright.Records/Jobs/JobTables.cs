using Microsoft.EntityFrameworkCore;
using Silkwright.Records.Films;
using Silkwright.Records.Shops;

namespace Silkwright.Records.Jobs;

internal static class JobTables
{
    public static void Shape(ModelBuilder model)
    {
        var revision = model.Entity<JobRevision>();
        _ = revision.HasKey(r => new { r.JobId, r.Revision });
        _ = revision.Property(r => r.State).HasConversion<string>();
        _ = revision.HasOne<ShopEntry>().WithMany().HasForeignKey(r => r.ShopKey).OnDelete(DeleteBehavior.Restrict);

        var film = model.Entity<JobFilm>();
        _ = film.HasKey(f => new { f.JobId, f.NameInJob, f.Version });
        _ = film.Property(f => f.Page).HasDefaultValue(1);
        _ = film.Ignore(f => f.Key);
        _ = film.HasOne<StoredFilm>().WithMany().HasForeignKey(f => f.FilmHash).OnDelete(DeleteBehavior.Restrict);
    }
}
