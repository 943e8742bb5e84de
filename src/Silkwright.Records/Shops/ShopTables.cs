using Microsoft.EntityFrameworkCore;

namespace Silkwright.Records.Shops;

internal static class ShopTables
{
    public static void Shape(ModelBuilder model)
    {
        _ = model.Entity<ShopEntry>().HasKey(s => s.Key);
        _ = model.Entity<ShopRevision>().HasKey(r => new { r.ShopKey, r.Revision });
        _ = model.Entity<ShopRevision>().HasOne<ShopEntry>().WithMany().HasForeignKey(r => r.ShopKey).OnDelete(DeleteBehavior.Restrict);
        _ = model.Entity<DefaultShop>().ToTable("DefaultShops").HasKey(d => d.Choice);
        _ = model.Entity<DefaultShop>().Property(d => d.Choice).ValueGeneratedNever();
        _ = model.Entity<DefaultShop>().HasOne<ShopEntry>().WithMany().HasForeignKey(d => d.ShopKey).OnDelete(DeleteBehavior.Restrict);
    }
}
