using System.Globalization;
using Silkwright.Estimates;

namespace Silkwright.Records.Screens;

/// <summary>Which orders of entries can have happened.</summary>
public static class ScreenOrder
{
    /// <summary>Clocks of tablets differ by no more than this. Common practice, no source. [5 min]</summary>
    public static readonly TimeSpan ClockAllowance = TimeSpan.FromMinutes(5);

    /// <summary>Everything impossible in a record.</summary>
    /// <param name="events">All entries of one screen, the new one among them.</param>
    /// <param name="now">Nothing has happened later than this.</param>
    public static IReadOnlyList<Problem> Faults(IReadOnlyCollection<ScreenEvent> events, DateTimeOffset now)
    {
        var problems = new ProblemList();
        var walk = new Walk();
        foreach (var entry in ScreenStory.Holding(events).Select(e => e.Entry))
        {
            var where = Where(entry);
            Step(problems, where, walk, entry.Fact);
            if (walk.LastAt - entry.At > ClockAllowance)
            {
                problems.Add(
                    $"The time, {Text(entry.At)}, is before the previous entry's, {Text(walk.LastAt)}.", where,
                    "Give the time it really happened, or correct the earlier entry first.");
            }

            if (entry.At - now > ClockAllowance)
                problems.Add($"The time, {Text(entry.At)}, is yet to come.", where, "Give the time it happened; check the tablet's clock.");
            walk.LastAt = entry.At > walk.LastAt ? entry.At : walk.LastAt;
        }

        return problems.Problems;
    }

    private static string Where(ScreenEvent entry) => string.Create(
        CultureInfo.InvariantCulture, $"screen {entry.ScreenId}, entry {entry.Sequence} ({FactText.Kind(entry.Kind)})");

    private static string Text(DateTimeOffset at) => at.ToString("yyyy-MM-dd HH:mm:ss 'UTC'", CultureInfo.InvariantCulture);

    private static void Step(ProblemList problems, string where, Walk walk, ScreenFact fact)
    {
        if (walk.End is EndReason.Reclaimed or EndReason.Broke)
        {
            problems.Add(
                walk.End == EndReason.Broke ? "This stencil broke down before." : "This screen was reclaimed before.", where,
                "Begin a new screen for the frame, or correct the entry that ended this one.");
            return;
        }

        if (walk.End == EndReason.Stored && fact is ScreenDegreased or ScreenCoated or ScreenExposed)
            problems.Add("This screen was put away with its stencil.", where, "Record it as reclaimed, then begin a new screen for the frame.");

        switch (fact)
        {
            case ScreenDegreased when walk.Coated:
                problems.Add("A coated screen cannot be degreased.", where, "Record it as reclaimed, then begin a new screen for the frame.");
                break;
            case ScreenCoated when walk.Exposed:
                problems.Add("It has been exposed, so another coat is another stencil.", where, "Record it as reclaimed, then begin a new screen.");
                break;
            case DryingBegun when walk.Drying:
                problems.Add("It is drying already.", where, "Record that it was taken out first.");
                break;
            case DryingEnded when !walk.Drying:
                problems.Add("It was not put to dry.", where, "Record when it was put in first.");
                break;
            case ScreenExposed when !walk.Coated:
                problems.Add("It was never coated.", where, "Record the coat first, with the time it happened.");
                break;
            case ScreenExposed when walk.Exposed:
                problems.Add("It has been exposed already.", where, "Correct the earlier exposure, or begin a new screen.");
                break;
            case ScreenCoated or ScreenExposed when walk.Drying:
                problems.Add("It is still drying.", where, "Record when it was taken out first.");
                break;
            case ScreenChecked or ScreenPrinted when !walk.Exposed:
                problems.Add("It was never exposed, so it carries no stencil.", where, "Record the exposure first, with the time it happened.");
                break;
            case ScreenEnded { Reason: EndReason.Broke } when !walk.Exposed:
                problems.Add("A stencil that was never exposed cannot break down.", where, "Record it as reclaimed, and say in the note what happened.");
                break;
            default:
                break;
        }

        walk.Coated |= fact is ScreenCoated;
        walk.Exposed |= fact is ScreenExposed;
        walk.Drying = (walk.Drying || fact is DryingBegun) && fact is not DryingEnded;
        walk.End = fact is ScreenEnded ended ? ended.Reason : fact is JobAssigned or ScreenPrinted ? null : walk.End;
    }

    private sealed class Walk
    {
        public DateTimeOffset LastAt { get; set; } = DateTimeOffset.MinValue;

        public bool Coated { get; set; }

        public bool Drying { get; set; }

        public bool Exposed { get; set; }

        public EndReason? End { get; set; }
    }
}
