using Silkwright.Records.Screens;

namespace Silkwright.Records.Tests.Screens;

/// <summary>A record told without a database: each entry a number of minutes after the start.</summary>
internal static class Told
{
    public static readonly DateTimeOffset Start = new(2026, 11, 25, 8, 0, 0, TimeSpan.Zero);

    public static IReadOnlyList<ScreenEvent> By(params (double Minutes, ScreenFact Fact)[] entries) =>
        [.. entries.Select((e, i) => Entry(i + 1, e.Fact, e.Minutes))];

    public static ScreenEvent Entry(int sequence, ScreenFact fact, double minutes, int? corrects = null) => new()
    {
        ScreenId = "S-1",
        Sequence = sequence,
        Kind = fact.Kind,
        Fact = fact,
        At = Start.AddMinutes(minutes),
        RecordedAt = Start.AddMinutes(minutes),
        Person = "Ines",
        IdempotencyKey = $"k{sequence}",
        Corrects = corrects,
        Why = corrects is null ? null : "a slip",
    };
}
