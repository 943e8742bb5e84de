using System.Text.Json;
using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.ChangeTracking;
using Silkwright.Gauging;
using Silkwright.Records.Shops;

namespace Silkwright.Records.Gauging;

internal static class GaugingTables
{
    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web)
    {
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingDefault,
        IgnoreReadOnlyProperties = true,
    };

    public static void Shape(ModelBuilder model)
    {
        var reading = model.Entity<KeptReading>();
        _ = reading.ToTable("GaugeReadings").HasKey(r => new { r.ShopKey, r.Number });
        _ = reading.HasIndex(r => r.BatchKey);
        _ = reading.Property(r => r.Reading).HasConversion(
            entry => JsonSerializer.Serialize(entry, Json),
            text => JsonSerializer.Deserialize<GaugeEntry>(text, Json),
            new ValueComparer<GaugeEntry?>((a, b) => Equals(a, b), entry => entry == null ? 0 : entry.GetHashCode(), entry => entry));
        _ = reading.HasOne<ShopEntry>().WithMany().HasForeignKey(r => r.ShopKey).OnDelete(DeleteBehavior.Restrict);
        // A withdrawal refers to a reading of the same shop, and the database holds it to that.
        _ = reading.HasOne<KeptReading>().WithMany().HasForeignKey(r => new { r.ShopKey, r.Withdraws }).OnDelete(DeleteBehavior.Restrict);
    }

    /// <summary>An entry as it is kept.</summary>
    internal static string Written(GaugeEntry entry) => JsonSerializer.Serialize(entry, Json);
}
