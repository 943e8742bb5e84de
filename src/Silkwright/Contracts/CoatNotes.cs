using Silkwright.Coating.Learning;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>What was assumed of readings and cases.</summary>
internal static class CoatNotes
{
    public static Note OfExperience(CoatExperience elsewhere) => new(
        $"Begun from what {elsewhere.Readings} readings of {elsewhere.Shops} shop{(elsewhere.Shops == 1 ? "" : "s")} elsewhere taught; no reading given here may be among them.", Ground.MeasuredElsewhere);

    public static IEnumerable<Note> Of(CoatReadings taken, IReadOnlyList<CoatRow> cases, CoatExperience? elsewhere = null)
    {
        var rows = taken.Rows.Concat(cases).ToArray();
        if (elsewhere is not null)
            yield return OfExperience(elsewhere);
        else if (taken.Used.Count == 0)
            yield return new Note("No reading was learnt from: what is told is what the trade expects of such strokes.", Ground.CommonPractice);
        if (taken.Flags.Count(flag => !flag.Used) is > 0 and var out1)
            yield return new Note($"{out1} of {taken.Rows.Count} readings {(out1 == 1 ? "was" : "were")} not learnt from; each is flagged with its line and what to do.");
        if (taken.Rows.Count > 0 && taken.Flags.Count(flag => flag.Used) is > 0 and var twice)
            yield return new Note($"{twice} lines stand there twice or more word for word and were taken as repeats that read the same.");
        if (rows.Any(row => !row.Coat.EdgeIsKnown))
            yield return new Note("Where no edge radius is given a round edge of 1.5 mm is taken, and anything down to a sharp one is inside the interval.", Ground.CommonPractice);
        if (rows.Any(row => row.StrokesCounted))
            yield return new Note("Where strokes are counted and not written in order, those on the print side came first, then those on the squeegee side, wet on wet.", Ground.CommonPractice);
        if (rows.Any(row => row.Coat.Emulsion.SolidsPercent is null))
            yield return new Note("Where no solids are given, 37 % by weight are taken (32 to 42).", Ground.CommonPractice);
        if (rows.Any(row => row.Coat.Emulsion.DensityGPerCm3 is null))
            yield return new Note("Where no density of the emulsion is given, its solids are taken to weigh 1.20 g/cm³ (docs/engines/emulsion.md).", Ground.CommonPractice);
        foreach (var note in taken.NameNotes)
            yield return note;
        foreach (var shop in taken.OptedOut.Order(StringComparer.Ordinal))
            yield return new Note($"{shop} shares nothing: its readings taught nobody else, and its own cases are answered out of its own readings alone.");
    }
}
