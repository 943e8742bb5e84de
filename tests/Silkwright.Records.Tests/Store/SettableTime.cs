namespace Silkwright.Records.Tests.Store;

/// <summary>A clock that stands until it is moved.</summary>
internal sealed class SettableTime : TimeProvider
{
    public DateTimeOffset Now { get; set; } = new(2026, 11, 25, 8, 0, 0, TimeSpan.Zero);

    public void Pass(TimeSpan time) => Now += time;

    public override DateTimeOffset GetUtcNow() => Now;
}
