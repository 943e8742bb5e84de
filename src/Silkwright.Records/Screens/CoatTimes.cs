using Silkwright.Estimates;

namespace Silkwright.Records.Screens;

/// <summary>How long a screen dried and waited.</summary>
internal static class CoatTimes
{
    public static double? DryMinutes(IReadOnlyList<StoryEntry> entries, DateTimeOffset asOf)
    {
        double? minutes = null;
        DateTimeOffset? since = null;
        foreach (var entry in entries.Select(e => e.Entry))
        {
            switch (entry.Fact)
            {
                case ScreenCoated: minutes ??= 0; break;
                case DryingBegun: since = entry.At; break;
                case DryingEnded when since is { } begun:
                    // Before the first coat there is nothing to add to: a degreased screen dries too.
                    minutes += Minutes(begun, entry.At);
                    since = null;
                    break;
                case ScreenExposed or ScreenEnded: return minutes;
                default: break;
            }
        }

        return since is { } open ? minutes + Minutes(open, asOf) : minutes;
    }

    public static IReadOnlyList<LongWait> LongWaits(IReadOnlyList<StoryEntry> entries, DateTimeOffset asOf)
    {
        var waits = new List<LongWait>();
        ScreenEvent? waiting = null;
        var coated = false;
        var exposed = false;
        foreach (var entry in entries.Select(e => e.Entry))
        {
            if (!Ends(entry.Fact))
                continue;
            if (waiting is not null)
                Note(waits, waiting, coated, entry.At, over: true);
            coated |= entry.Fact is ScreenCoated;
            exposed |= entry.Fact is ScreenExposed or ScreenEnded;
            waiting = exposed ? null : entry;
        }

        if (waiting is not null)
            Note(waits, waiting, coated, asOf, over: false);
        return waits;
    }

    // Reading the air, the tension or a job's name in between does not end a wait.
    private static bool Ends(ScreenFact fact) =>
        fact is ScreenDegreased or ScreenCoated or DryingBegun or DryingEnded or ScreenExposed or ScreenEnded;

    private static void Note(List<LongWait> waits, ScreenEvent waiting, bool coated, DateTimeOffset until, bool over)
    {
        (ScreenEventKind Before, TimeSpan Limit)? next = waiting.Fact switch
        {
            ScreenDegreased => (ScreenEventKind.Coated, WaitLimits.DegreasedToCoated),
            ScreenCoated => (ScreenEventKind.DryIn, WaitLimits.CoatedToDryIn),
            DryingBegun => (ScreenEventKind.DryOut, WaitLimits.DryInToDryOut),
            DryingEnded when coated => (ScreenEventKind.Exposed, WaitLimits.DryOutToExposed),
            _ => null,
        };
        if (next is { } step && until - waiting.At > step.Limit)
        {
            waits.Add(new LongWait(
                waiting.Kind, step.Before, Minutes(waiting.At, until), step.Limit.TotalMinutes, Ground.CommonPractice, over));
        }
    }

    // A clock that runs a little behind must not give a negative stay.
    private static double Minutes(DateTimeOffset from, DateTimeOffset to) => Math.Max(0, (to - from).TotalMinutes);
}
