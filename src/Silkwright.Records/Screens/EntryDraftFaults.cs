using Silkwright.Estimates;
using Silkwright.Records.Store;

namespace Silkwright.Records.Screens;

/// <summary>What may be wrong with an entry by itself; its order among the others is <see cref="ScreenOrder"/>'s.</summary>
internal static class EntryDraftFaults
{
    /// <summary>A few names and short texts; more is a paste gone wrong.</summary>
    private const int LongestFact = 4 * DocumentFaults.LongestText;

    public static void ThrowIfAny(string screenId, EntryDraft draft, IReadOnlyCollection<ScreenEvent> events)
    {
        var problems = new ProblemList();
        var where = $"screen {screenId}, {FactText.Kind(draft.Fact.Kind)}";
        FactFaults.AddTo(problems, where, draft.Fact);
        DocumentFaults.Person(problems, where, draft.Person);
        if (FactJson.Write(draft.Fact).Length > LongestFact)
            problems.Add($"The entry is longer than {LongestFact} characters.", where, "Shorten its texts.");
        if (draft.Note?.Length > DocumentFaults.LongestText)
            problems.Add($"The note is longer than {DocumentFaults.LongestText} characters.", where, "Shorten it.");
        if (draft.Corrects is { } sequence)
            Correction(problems, where, draft, events.FirstOrDefault(e => e.Sequence == sequence), sequence);
        else if (draft.Fact is EntryWithdrawn)
            problems.Add("It does not say which entry is taken back.", where, "Give the entry's number.");
        problems.ThrowIfAny();
    }

    private static void Correction(ProblemList problems, string where, EntryDraft draft, ScreenEvent? corrected, int sequence)
    {
        DocumentFaults.Why(problems, where, draft.Why);
        if (corrected is null)
            problems.Add($"The screen has no entry {sequence}.", where, "Give the number of one of its entries.");
        else if (draft.Fact is not EntryWithdrawn && corrected.Fact is not EntryWithdrawn && draft.Fact.Kind != corrected.Kind)
            problems.Add(
                $"Entry {sequence} is {FactText.Kind(corrected.Kind)}: a correction says the same kind of thing.", where,
                "Withdraw that entry, then write a new one.");
    }
}
