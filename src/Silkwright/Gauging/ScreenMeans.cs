using Silkwright.Naming;

namespace Silkwright.Gauging;

/// <summary>Screens' emulsion over mesh out of single readings: those of one screen, day and hand are one coat. Hands, troughs and emulsions are one however they are spelled.</summary>
public static class ScreenMeans
{
    /// <summary>One reading a coat, with its day; what has no day or no emulsion over mesh is left out.</summary>
    /// <param name="entries">Single readings.</param>
    /// <param name="bareUm">Thickness of the bare mesh, where no bare readings of a screen are there. [µm]</param>
    public static IReadOnlyList<CoatedReading> Of(IReadOnlyList<GaugeEntry> entries, double? bareUm = null)
    {
        var bare = entries.Where(IsBare).ToLookup(entry => entry.Screen ?? "");
        var (people, troughs, emulsions) = (new Spellings(), new Spellings(), new Spellings());
        return [.. entries.Where(entry => entry.On is not null && !IsBare(entry))
            .GroupBy(entry => (entry.Screen, On: entry.On!.Value, Operator: people.Of(entry.Operator), Trough: troughs.Of(entry.Trough), Emulsion: emulsions.Of(entry.Emulsion), entry.Lot, entry.Recipe))
            .Select(coat => (coat.Key, Eom: EomOf([.. coat], [.. bare[coat.Key.Screen ?? ""]], bareUm)))
            .Where(coat => coat.Eom is not null)
            .Select(coat => new CoatedReading(coat.Key.On, coat.Eom!.Value)
            {
                Screen = coat.Key.Screen,
                Operator = coat.Key.Operator,
                Trough = coat.Key.Trough,
                Emulsion = coat.Key.Emulsion,
                Lot = coat.Key.Lot,
                Recipe = coat.Key.Recipe,
            })];
    }

    /// <summary>Each screen that was read bare and coated, with its emulsion over mesh.</summary>
    public static IReadOnlyList<(string Screen, BarePairing Pairing)> Pairs(IReadOnlyList<GaugeEntry> entries) =>
    [
        .. from screen in entries.Where(entry => entry.Screen is not null).GroupBy(entry => entry.Screen!)
           let bare = screen.Where(entry => entry.BareUm is not null).Select(entry => (entry.Place, entry.BareUm!.Value)).ToArray()
           let coated = screen.Where(entry => entry.CoatedUm is not null).Select(entry => (entry.Place, entry.CoatedUm!.Value)).ToArray()
           where bare.Length > 0 && coated.Length > 0
           select (screen.Key, BarePairing.Of(bare, coated)),
    ];

    private static bool IsBare(GaugeEntry entry) => entry is { BareUm: not null, CoatedUm: null, EomUm: null };

    private static double? EomOf(GaugeEntry[] coat, GaugeEntry[] bare, double? bareUm)
    {
        double[] told = [.. coat.Select(entry => entry.OverMeshUm).OfType<double>()];
        if (told.Length > 0)
            return told.Average();
        var coated = coat.Where(entry => entry.CoatedUm is not null).Select(entry => (entry.Place, entry.CoatedUm!.Value)).ToArray();
        if (coated.Length == 0)
            return null;
        return bare.Length > 0
            ? BarePairing.Of([.. bare.Select(entry => (entry.Place, entry.BareUm!.Value))], coated).EomUm
            : coated.Average(reading => reading.Value) - bareUm;
    }
}
