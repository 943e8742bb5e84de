using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.ChangeTracking;
using Silkwright.Records.Shops;

namespace Silkwright.Records.Screens;

internal static class ScreenTables
{
    public static void Shape(ModelBuilder model)
    {
        var screen = model.Entity<Screen>();
        _ = screen.HasKey(s => s.Id);
        _ = screen.Ignore(s => s.Mesh);
        _ = screen.HasIndex(s => s.IdempotencyKey).IsUnique();
        _ = screen.HasOne<ShopEntry>().WithMany().HasForeignKey(s => s.ShopKey).OnDelete(DeleteBehavior.Restrict);

        var entry = model.Entity<ScreenEvent>();
        _ = entry.HasKey(e => new { e.ScreenId, e.Sequence });
        _ = entry.Property(e => e.Kind).HasConversion<string>();
        _ = entry.Property(e => e.Fact).HasConversion(
            fact => FactJson.Write(fact),
            text => FactJson.Read(text),
            new ValueComparer<ScreenFact>((a, b) => Equals(a, b), fact => fact.GetHashCode(), fact => fact));
        _ = entry.HasIndex(e => e.IdempotencyKey).IsUnique();
        _ = entry.HasOne<Screen>().WithMany().HasForeignKey(e => e.ScreenId).OnDelete(DeleteBehavior.Restrict);
        // A correction refers to an entry of the same screen, and the database holds it to that.
        _ = entry.HasOne<ScreenEvent>().WithMany().HasForeignKey(e => new { e.ScreenId, e.Corrects }).OnDelete(DeleteBehavior.Restrict);
    }
}
