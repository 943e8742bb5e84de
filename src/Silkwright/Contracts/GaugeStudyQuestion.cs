using Silkwright.Estimates;
using Silkwright.Gauging;
using Silkwright.Naming;

namespace Silkwright.Contracts;

/// <summary>A study out of a gauge's readings: what was read of what.</summary>
public static class GaugeStudyQuestion
{
    public static readonly QuantityField Wanted = new("wanted", QuantityKind.Thickness, "half width that a mean should have") { Sample = "0.5um", Least = 0.01, Most = 100 };

    /// <summary>Coated readings where there are some, emulsion over mesh or bare mesh otherwise. A part is a screen, and a place on it where places are told.</summary>
    /// <exception cref="InputProblemException">The readings make no study.</exception>
    public static GaugeStudyAnswer Of(GaugeFile file, double? wantedUm = null, CancellationToken cancel = default)
    {
        var entries = file.Entries;
        var (kind, value) = entries.Any(entry => entry.CoatedUm is not null) ? ("coated", entry => entry.CoatedUm)
            : entries.Any(entry => entry.EomUm is not null) ? ("eom", entry => entry.EomUm)
            : ("bare", (Func<GaugeEntry, double?>)(entry => entry.BareUm));
        var people = new Spellings();
        StudyReading[] readings = [.. entries.Where(entry => value(entry) is not null)
            .Select(entry => new StudyReading(PartOf(entry), people.Of(entry.Operator) ?? "nobody named", value(entry)!.Value, entry.Line))];
        if (readings.Length == 0)
            throw new InputProblemException(new Problem("No reading was taken.", "readings", "Look at what was given back, put it right and read the file again."));
        var study = GaugeStudy.Of(readings, wantedUm, cancel: cancel);
        return new GaugeStudyAnswer(kind, study with { Notes = [.. SpellingNotes.Of(people, "person", "people"), .. study.Notes] }, ScreenMeans.Pairs(entries), file);
    }

    private static string PartOf(GaugeEntry entry) => string.Join(" at ", new[] { entry.Screen, entry.Place }.OfType<string>()) is { Length: > 0 } named ? named : "one part";
}
