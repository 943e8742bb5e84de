using System.Globalization;
using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Gauging;
using Silkwright.Records.Gauging;
using Spectre.Console;

namespace Silkwright.Cli.Commands.Gauge;

/// <summary>What a gauge's file held, for people.</summary>
internal static class GaugeReadTable
{
    public static void Print(GaugeFile file, KeptBatch? kept, IAnsiConsole console)
    {
        var table = new Table { Border = TableBorder.Simple }.AddColumns("screen", "readings", "coated", "bare", "over mesh");
        foreach (var screen in file.Entries.GroupBy(entry => entry.Screen ?? ""))
        {
            string[] cells = [screen.Key, screen.Count().ToString(CultureInfo.InvariantCulture), Mean(screen.Select(e => e.CoatedUm)), Mean(screen.Select(e => e.BareUm)), Over([.. screen])];
            table.AddRow(cells.Select(cell => new Text(cell)));
        }

        console.Write(table);
        PrintRefusals(file, console);
        if (kept is not null)
            Prose.Write(console, "Kept: ", kept.Said);
        Notes.Print(file.Notes, console);
    }

    /// <summary>What was given back, and what was taken with a flag.</summary>
    public static void PrintRefusals(GaugeFile file, IAnsiConsole console)
    {
        foreach (var problem in file.Refused.SelectMany(row => row.Problems))
            Prose.Write(console, "  given back  ", $"{problem.Where}: {problem.What} {problem.Remedy}");
        foreach (var (_, problem) in file.Flagged)
            Prose.Write(console, "  flagged     ", $"{problem.Where}: {problem.What} {problem.Remedy}");
        if (file.Refused.Count + file.Flagged.Count > 0)
            console.WriteLine();
    }

    private static string Over(GaugeEntry[] entries)
    {
        var told = Mean(entries.Select(entry => entry.OverMeshUm));
        return told.Length > 0 ? told : ScreenMeans.Pairs(entries) is [var (_, pairing)] ? $"{pairing.EomUm.ToString("0.0", CultureInfo.InvariantCulture)} µm" : "";
    }

    private static string Mean(IEnumerable<double?> values) => values.OfType<double>().ToArray() is { Length: > 0 } there ? $"{there.Average().ToString("0.0", CultureInfo.InvariantCulture)} µm" : "";
}
