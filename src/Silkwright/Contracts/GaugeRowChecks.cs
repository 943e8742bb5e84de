using System.Globalization;
using Silkwright.Gauging;

namespace Silkwright.Contracts;

/// <summary>Looks at rows beside each other: thinner than their mesh, in another unit than the rest, there twice.</summary>
internal static class GaugeRowChecks
{
    private const double UmPerMil = 25.4;

    /// <summary>A coat that reads this much thinner than its mesh is a slip; less is the gauge. Common practice. [µm]</summary>
    private const double SlipUm = 3;

    /// <summary>Half the finest thread that is woven. [µm]</summary>
    private const double ThinnestUm = InputLimits.LeastThreadUm;

    /// <summary>Thicknesses of one kind in one shop's file lie within this factor of their median. Common practice. [1]</summary>
    private const double LikeFactor = 2.5;

    /// <summary>Fewer readings have no middle to be held against.</summary>
    private const int LeastForMiddle = 4;

    public static void Of(IReadOnlyList<GaugeRow> rows, double? bareUm)
    {
        foreach (var of in new (string Column, Func<GaugeEntry, double?> Value)[] { ("coated", e => e.CoatedUm), ("bare", e => e.BareUm), ("eom", e => e.EomUm) })
        {
            // Recipes differ by more than units do in thin coats: like is held against like.
            foreach (var recipe in rows.GroupBy(row => (row.Entry.Emulsion, row.Entry.Recipe)))
                OtherUnits([.. recipe], of.Column, of.Value);
        }

        foreach (var row in rows.Where(row => row.Refusals.Count == 0 && Math.Min(row.Entry.CoatedUm ?? ThinnestUm, row.Entry.BareUm ?? ThinnestUm) < ThinnestUm))
            row.Refuse(Text($"{row.Entry.CoatedUm ?? row.Entry.BareUm:0.##} µm is thinner than any mesh."), row.Entry.CoatedUm is null ? "bare" : "coated", "Check the unit: mil, or mm? If it is emulsion over mesh, call the column eom.");
        BelowMesh(rows, bareUm);
        Twice(rows);
    }

    private static void OtherUnits(IReadOnlyList<GaugeRow> rows, string column, Func<GaugeEntry, double?> of)
    {
        double[] sorted = [.. rows.Where(row => row.Refusals.Count == 0).Select(row => of(row.Entry)).OfType<double>().Order()];
        if (sorted.Length < LeastForMiddle)
            return;
        var middle = sorted[sorted.Length / 2];
        foreach (var row in rows.Where(row => row.Refusals.Count == 0))
        {
            if (of(row.Entry) is not { } um || IsLike(um))
                continue;
            if (IsLike(um * UmPerMil))
                row.Refuse(Text($"{um:0.##} µm beside {middle:0} µm: it looks like mil."), column, Text($"If it is {um:0.###} mil, write {um * UmPerMil:0.#} µm; if not, read it again."));
            else if (IsLike(um / UmPerMil))
                row.Refuse(Text($"{um:0.#} µm beside {middle:0.#} µm: it looks like a number in µm that was taken as mil."), column, Text($"If so, write {um / UmPerMil:0.#} µm; if not, read it again."));
            else
                row.Flag(Text($"{um:0.#} µm is far from the others' {middle:0.#} µm."), column, "Check that it is this screen, and read it again if it can be.");
        }

        bool IsLike(double um) => um > middle / LikeFactor && um < middle * LikeFactor;
    }

    private static void BelowMesh(IReadOnlyList<GaugeRow> rows, double? bareUm)
    {
        var bare = rows.Where(row => row.Refusals.Count == 0 && row.Entry is { BareUm: not null, CoatedUm: null, Screen: not null })
            .GroupBy(row => row.Entry.Screen!).ToDictionary(screen => screen.Key, screen => screen.Average(row => row.Entry.BareUm!.Value));
        foreach (var row in rows.Where(row => row.Refusals.Count == 0))
        {
            var entry = row.Entry;
            var mesh = entry.BareUm ?? (entry.Screen is { } screen && bare.TryGetValue(screen, out var read) ? read : bareUm);
            var over = entry.EomUm ?? (entry.CoatedUm - mesh);
            if (over is not < 0)
                continue;
            var column = entry.EomUm is null ? "coated" : "eom";
            var what = entry.EomUm is null ? Text($"{entry.CoatedUm:0.#} µm coated is thinner than the bare mesh, {mesh:0.#} µm.") : Text($"An emulsion over mesh of {entry.EomUm:0.#} µm is below the mesh.");
            if (over < -SlipUm)
                row.Refuse(what, column, "Check that bare and coated are of the same screen and not swapped, set the gauge to zero, and read again.");
            else
                row.Flag(what + " It is within what a gauge is out by.", column, "Set the gauge to zero on the bare mesh, and read again.");
        }
    }

    private static void Twice(IReadOnlyList<GaugeRow> rows)
    {
        foreach (var same in rows.Where(row => row.Refusals.Count == 0).GroupBy(row => string.Join('\u001f', row.Fields.Select(field => field.Trim()))).Where(same => same.Count() > 1))
        {
            foreach (var row in same.Skip(1))
            {
                if (row.IsNamed)
                    row.Refuse($"The same line stands at {same.First().Entry.Line}.", "", "Leave it out; if it is another reading, give it its own number or time.");
                else
                    row.Flag($"The same line stands at {same.First().Entry.Line}. A repeat that reads the same looks so too: it was taken.", "", "Give repeats a number or a time, then a line that is there twice is told from them.");
            }
        }
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
