using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace Silkwright.Records.Store;

/// <summary>Instants as UTC ticks, so that SQLite orders and compares them as numbers.</summary>
internal sealed class UtcTicks() : ValueConverter<DateTimeOffset, long>(
    instant => instant.UtcTicks,
    ticks => new DateTimeOffset(ticks, TimeSpan.Zero));
