using Silkwright.Coating.Learning;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>Which coat read now tells most of the coats to come: <c>coat next</c>.</summary>
public static class CoatNextQuestion
{
    /// <summary>Every coat is tried against every other.</summary>
    public const int MostCases = 200;

    /// <param name="readings">All readings, of any shops.</param>
    /// <param name="cases">Coats to come.</param>
    /// <param name="without">Shops that share nothing: a reading elsewhere tells nothing of theirs, nor theirs of others.</param>
    /// <param name="elsewhere">What readings of yet other shops taught; none: these readings alone.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="InputProblemException">There is no case, or there are too many.</exception>
    public static (IReadOnlyList<CoatRow> Cases, IReadOnlyList<ReadingWorth> Worths, IReadOnlyList<CoatFlag> Flags, IReadOnlyList<Note> Notes) Answer(
        IReadOnlyList<CoatRow> readings, IReadOnlyList<CoatRow> cases, IReadOnlyCollection<string>? without = null, CoatExperience? elsewhere = null, CancellationToken cancel = default)
    {
        if (cases.Count is 0 or > MostCases)
            throw new InputProblemException(new Problem($"There are {cases.Count} coats to come.", "cases", $"Give 1 to {MostCases}: tomorrow's."));
        var taken = new CoatReadings(readings, without ?? []);
        cases = taken.Spelled(cases);
        var learnt = new SharingCoats(taken, elsewhere, cancel);
        var worths = NextCoatReading.Of(coat => learnt.Of(coat.Shop), [.. cases.Select(row => row.Coat)], cancel);
        return (cases, worths, taken.Flags,
        [
            new Note($"A reading with the bare mesh beside it is reckoned at {NextCoatReading.UsualMinutes:0} minutes.", Ground.CommonPractice),
            new Note("How far intervals shrink does not hang on what will be read; the spreads of groups are kept as they are."),
            .. CoatNotes.Of(taken, cases, elsewhere),
        ]);
    }
}
