namespace Silkwright.Records.Screens;

/// <summary>A screen's record read as a story: what holds, in order, and where the screen is now. docs/engines/records.md.</summary>
public sealed record ScreenStory
{
    /// <summary>What holds, in order; withdrawn entries are gone, corrected ones corrected.</summary>
    public required IReadOnlyList<StoryEntry> Entries { get; init; }

    public required ScreenStage Stage { get; init; }

    /// <summary>Impressions so far.</summary>
    public required long Impressions { get; init; }

    /// <summary>Time the coat has spent drying before exposure, all stays together. [min]; none before it was coated.</summary>
    public double? DryMinutes { get; init; }

    public required IReadOnlyList<LongWait> LongWaits { get; init; }

    /// <summary>Latest tension read. [N/cm]</summary>
    public double? TensionNPerCm { get; init; }

    public ScreenCoated? Coat { get; init; }

    public ScreenExposed? Exposure { get; init; }

    public ScreenChecked? Check { get; init; }

    /// <summary>The latest job it was given to.</summary>
    public JobAssigned? Job { get; init; }

    public ScreenEnded? End { get; init; }

    /// <summary>Reads a record.</summary>
    /// <param name="events">All entries of one screen, in any order.</param>
    /// <param name="asOf">Now: what is still waiting or drying is counted up to here.</param>
    public static ScreenStory Of(IReadOnlyCollection<ScreenEvent> events, DateTimeOffset asOf)
    {
        var entries = Holding(events);
        var end = Last<ScreenEnded>(entries);
        var lastEntry = entries.Count > 0 ? entries[^1].Entry.Fact : null;
        return new ScreenStory
        {
            Entries = entries,
            Stage = StageOf(entries),
            Impressions = entries.Select(e => e.Entry.Fact).OfType<ScreenPrinted>().Sum(p => p.Impressions),
            DryMinutes = CoatTimes.DryMinutes(entries, asOf),
            LongWaits = CoatTimes.LongWaits(entries, asOf),
            TensionNPerCm = Last<MeshTensioned>(entries)?.TensionNPerCm,
            Coat = Last<ScreenCoated>(entries),
            Exposure = Last<ScreenExposed>(entries),
            Check = Last<ScreenChecked>(entries),
            Job = Last<JobAssigned>(entries),
            End = lastEntry is ScreenEnded ? end : null,
        };
    }

    /// <summary>What holds in each place, in the order the places were first written.</summary>
    public static IReadOnlyList<StoryEntry> Holding(IReadOnlyCollection<ScreenEvent> events)
    {
        var places = new SortedDictionary<int, ScreenEvent>();
        var placeOf = new Dictionary<int, int>();
        foreach (var entry in events.OrderBy(e => e.Sequence))
        {
            var place = entry.Corrects is { } corrected && placeOf.TryGetValue(corrected, out var first) ? first : entry.Sequence;
            placeOf[entry.Sequence] = place;
            places[place] = entry;
        }

        return [.. places.Where(p => p.Value.Fact is not EntryWithdrawn).Select(p => new StoryEntry(p.Key, p.Value))];
    }

    private static T? Last<T>(IReadOnlyList<StoryEntry> entries)
        where T : ScreenFact => entries.Select(e => e.Entry.Fact).OfType<T>().LastOrDefault();

    private static ScreenStage StageOf(IReadOnlyList<StoryEntry> entries)
    {
        var stage = ScreenStage.Meshed;
        var beforeDrying = stage;
        foreach (var fact in entries.Select(e => e.Entry.Fact))
        {
            switch (fact)
            {
                case ScreenDegreased: stage = ScreenStage.Degreased; break;
                case ScreenCoated: stage = ScreenStage.Coated; break;
                case DryingBegun: (beforeDrying, stage) = (stage, ScreenStage.Drying); break;
                case DryingEnded: stage = beforeDrying == ScreenStage.Coated ? ScreenStage.Dry : beforeDrying; break;
                case ScreenExposed: stage = ScreenStage.Exposed; break;
                case ScreenChecked check: stage = check.Result == CheckResult.Rejected ? ScreenStage.Rejected : ScreenStage.Ready; break;
                case JobAssigned when stage == ScreenStage.Stored: stage = ScreenStage.Ready; break;
                case ScreenPrinted: stage = ScreenStage.Printing; break;
                case ScreenEnded ended:
                    stage = ended.Reason switch
                    {
                        EndReason.Reclaimed => ScreenStage.Reclaimed,
                        EndReason.Broke => ScreenStage.Broken,
                        EndReason.Stored => ScreenStage.Stored,
                        _ => throw new ArgumentOutOfRangeException(nameof(entries), ended.Reason, "unknown end"),
                    };
                    break;
                default: break;
            }
        }

        return stage;
    }
}
