using Silkwright.Catalogue;
using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Spectre.Console;

namespace Silkwright.Cli.Commands.Catalogue;

/// <summary>Sheets for people: a line a property, its other sources below it, then what nobody knows.</summary>
internal static class CatalogueTable
{
    private const int NameWidth = 36;
    private const int ValueWidth = 18;

    public static void Print(IReadOnlyList<CatalogueSheet> sheets, IAnsiConsole console)
    {
        foreach (var sheet in sheets)
        {
            console.WriteLine(sheet.Emulsion);
            foreach (var line in sheet.Lines)
            {
                Source($"  {CatalogueWords.Of(line)}", line.Used, "", console);
                foreach (var other in line.Others)
                    Source("      beside it", other.Entry, other.Conflicts ? "CONFLICTS: " : "", console);
            }

            Questions(sheet, console);
            console.WriteLine();
        }

        Notes.Print(CatalogueDocument.Rules, console);
    }

    private static void Source(string name, CatalogueEntry entry, string verdict, IAnsiConsole console)
    {
        Prose.Write(
            console,
            $"{name.PadRight(NameWidth)} {CatalogueWords.Value(entry).PadRight(ValueWidth)} {GroundMark.Mark(entry.Ground)} ",
            $"{verdict}{CatalogueWords.Who(entry)}");
    }

    private static void Questions(CatalogueSheet sheet, IAnsiConsole console)
    {
        if (sheet.Questions.Count == 0)
            return;
        console.WriteLine("  Nobody knows, so measure:");
        foreach (var same in sheet.Questions.GroupBy(question => question.HowToMeasure))
            Prose.Write(console, "    ? ", $"{string.Join(", ", same.Select(question => question.Meaning))}. {same.Key}");
    }
}
