namespace Silkwright.Records.Store;

/// <summary>Instants as the records keep them: UTC, to the millisecond, the same on every database.</summary>
internal static class Instant
{
    public static DateTimeOffset Kept(DateTimeOffset instant) =>
        new(instant.UtcTicks - (instant.UtcTicks % TimeSpan.TicksPerMillisecond), TimeSpan.Zero);

    public static DateTimeOffset KeptNow(this TimeProvider time) => Kept(time.GetUtcNow());
}
