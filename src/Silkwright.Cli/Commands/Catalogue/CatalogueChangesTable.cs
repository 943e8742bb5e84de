using System.Globalization;
using Silkwright.Catalogue;
using Silkwright.Cli.Printing;
using Silkwright.Records.Catalogues;
using Spectre.Console;

namespace Silkwright.Cli.Commands.Catalogue;

/// <summary>What a catalogue changes against the kept one, for people.</summary>
internal static class CatalogueChangesTable
{
    public static void Print(CatalogueDifference difference, EmulsionCatalogue after, IAnsiConsole console)
    {
        if (difference.IsNone)
            console.WriteLine("It says what the kept catalogue says.");
        Named("New", difference.New, console);
        Named("Gone", difference.Gone, console);
        foreach (var emulsion in difference.Changed.GroupBy(change => change.Emulsion))
        {
            console.WriteLine($"Changed: {emulsion.Key}");
            foreach (var change in emulsion)
                Prose.Write(console, "  - ", CatalogueWords.Of(change));
        }

        foreach (var sheet in after.Sheets.Where(sheet => sheet.Lines.Any(line => line.Conflicts)))
            Prose.Write(console, "Sources conflict: ", $"{sheet.Emulsion}, on {string.Join(", ", sheet.Lines.Where(line => line.Conflicts).Select(CatalogueWords.Of))}");
        console.WriteLine();
    }

    /// <summary>Who kept it, and when.</summary>
    public static void PrintKept(CatalogueRevision revision, TimeZoneInfo zone, IAnsiConsole console)
    {
        var at = TimeZoneInfo.ConvertTime(revision.SavedAt, zone).ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
        console.WriteLine($"Kept by {revision.SavedBy}, {at}, revision {revision.Revision}");
        console.WriteLine();
    }

    private static void Named(string what, IReadOnlyList<string> emulsions, IAnsiConsole console)
    {
        if (emulsions.Count > 0)
            Prose.Write(console, $"{what}: ", string.Join(", ", emulsions));
    }
}
