using Microsoft.EntityFrameworkCore;
using Silkwright.Records.Shops;

namespace Silkwright.Records.Coating;

internal static class CoatingTables
{
    public static void Shape(ModelBuilder model)
    {
        var experience = model.Entity<KeptExperience>();
        _ = experience.ToTable("CoatExperience").HasKey(e => new { e.ShopKey, e.Number });
        _ = experience.HasOne<ShopEntry>().WithMany().HasForeignKey(e => e.ShopKey).OnDelete(DeleteBehavior.Restrict);
        _ = experience.HasOne<KeptExperience>().WithMany().HasForeignKey(e => new { e.ShopKey, e.Withdraws }).OnDelete(DeleteBehavior.Restrict);
    }
}
