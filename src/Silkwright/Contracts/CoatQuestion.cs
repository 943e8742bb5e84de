using Silkwright.Coating.Learning;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>What readings of coats say of other coats: <c>coat predict</c>.</summary>
public static class CoatQuestion
{
    /// <summary>Readings held against the others.</summary>
    public const int MostHeld = 500;

    /// <param name="readings">All readings, of any shops.</param>
    /// <param name="cases">Coats asked about.</param>
    /// <param name="without">Shops that share nothing: they teach nobody else, and are answered out of their own readings alone.</param>
    /// <param name="elsewhere">What readings of yet other shops taught; none: these readings alone.</param>
    /// <param name="cancel">Stops the work.</param>
    public static CoatAnswer Answer(IReadOnlyList<CoatRow> readings, IReadOnlyList<CoatRow> cases, IReadOnlyCollection<string>? without = null, CoatExperience? elsewhere = null, CancellationToken cancel = default)
    {
        var taken = new CoatReadings(readings, without ?? []);
        cases = taken.Spelled(cases);
        var learnt = new SharingCoats(taken, elsewhere, cancel);
        return new CoatAnswer
        {
            Cases = [.. cases.Select(row => (row, learnt.Of(row.Coat.Shop).Expect(row.Coat), learnt.Of(row.Coat.Shop).ExpectMean(row.Coat)))],
            Held = [.. taken.Used.Where(row => !taken.OptedOut.Contains(row.Coat.Shop)).TakeLast(MostHeld).Zip(learnt.Shared.Held(MostHeld), (row, held) => (row, held.Expected))],
            Effects = learnt.Shared.Effects(),
            RepeatabilityUm = Repeatability(taken.Used),
            Given = readings.Count,
            Used = taken.Used.Count,
            Flags = taken.Flags,
            Learnt = learnt.Shared,
            Notes = [.. CoatNotes.Of(taken, cases, elsewhere)],
        };
    }

    /// <summary>Of places that are named and were read again. [µm]</summary>
    internal static Estimate? Repeatability(IEnumerable<CoatRow> rows) => PlaceRepeats.Of(
        rows.Where(row => row is { Coat.Screen: not null, Point: not null }).Select(row => ((row.Coat.Shop, row.Coat.Screen, row.Point, row.MeasuredOn), row.EomUm!.Value)));
}
