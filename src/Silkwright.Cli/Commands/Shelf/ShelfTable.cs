using Silkwright.Cli.Printing;
using Silkwright.Estimates;
using Silkwright.Scheduling.Shelf;
using Spectre.Console;

namespace Silkwright.Cli.Commands.Shelf;

/// <summary>The few emulsions to keep, for people.</summary>
internal static class ShelfTable
{
    public static void Print(ShelfCase shelf, ShelfAnswer answer, IAnsiConsole console)
    {
        Prose.Write(console, "", $"Keep {answer.Keep.Count} of {shelf.Emulsions.Count} emulsions: {List(answer.Keep)}.");
        console.Write(Kept(shelf, answer));
        string[] sentences =
        [
            ShelfSentences.Cost(answer), ShelfSentences.Sure(answer), ShelfSentences.Proof(answer), ShelfSentences.Change(answer),
            .. ShelfSentences.Sizes(answer), .. ShelfSentences.Others(answer),
        ];
        foreach (var sentence in sentences.Where(sentence => sentence.Length > 0))
            Prose.Write(console, "", sentence);
        foreach (var month in answer.Months)
            Prose.Write(console, "  ", $"{month.Name} ({ShownUnit.Percent.Write(month.WeightPercent)}): {new ShownUnit(answer.Currency ?? "").Write(month.MonthlyCost)}");
        console.WriteLine();
        Notes.Print(answer.Notes, console);
    }

    private static Table Kept(ShelfCase shelf, ShelfAnswer answer)
    {
        var unit = answer.Currency is { } currency ? $", {currency}" : "";
        var table = new Table { Border = TableBorder.Simple }.AddColumns("emulsion", "today", "jobs", "screens a month", $"keeping{unit}", $"screens' cost{unit}");
        var today = shelf.Emulsions.Where(emulsion => emulsion.KeptToday).Select(emulsion => emulsion.Id).ToHashSet();
        foreach (var use in answer.Uses)
        {
            table.AddRow(new[]
            {
                use.Emulsion, today.Contains(use.Emulsion) ? "kept" : answer.Change is null ? "" : "new", Figures.Exact(use.Jobs), Figures.Exact(use.ScreensPerMonth),
                Figures.Exact(use.FixedCostPerMonth), Figures.Exact(use.RunningCostPerMonth),
            }.Select(cell => new Text(cell)));
        }

        return table;
    }

    private static string List(IReadOnlyList<string> ids) => string.Join(", ", ids);
}
