using Silkwright.Cli.Printing;
using Silkwright.Estimates;
using Silkwright.Scheduling.Shelf;
using Spectre.Console;

namespace Silkwright.Cli.Commands.Shelf;

/// <summary>The few emulsions to keep, for people.</summary>
internal static class ShelfTable
{
    /// <summary>A gap that no printed figure shows. [%]</summary>
    private const double ShownGapPercent = 1e-6;

    public static void Print(ShelfCase shelf, ShelfAnswer answer, IAnsiConsole console)
    {
        Prose.Write(console, "", $"Keep {answer.Keep.Count} of {shelf.Emulsions.Count} emulsions: {List(answer.Keep)}.");
        console.Write(Kept(shelf, answer));
        Prose.Write(console, "", $"A month costs {Figures.Exact(answer.MonthlyCost)}: {Parts(answer)}.");
        Prose.Write(console, "", Proof(answer));
        if (answer.Change is { } change)
            Prose.Write(console, "", Change(change));
        foreach (var sentence in Sizes(answer).Concat(Others(answer)))
            Prose.Write(console, "", sentence);
        foreach (var month in answer.Months)
            Prose.Write(console, "  ", $"{month.Name} ({ShownUnit.Percent.Write(month.WeightPercent)}): {Figures.Exact(month.MonthlyCost)}");
        console.WriteLine();
        Notes.Print(answer.Notes, console);
    }

    private static Table Kept(ShelfCase shelf, ShelfAnswer answer)
    {
        var table = new Table { Border = TableBorder.Simple }.AddColumns("emulsion", "today", "jobs", "screens a month", "fixed", "screens' cost");
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

    private static string Parts(ShelfAnswer answer)
    {
        var parts = $"{Figures.Exact(answer.FixedCostPerMonth)} for keeping, {Figures.Exact(answer.RunningCostPerMonth)} for the screens";
        return answer.SwitchingCostPerMonth > 0 ? $"{parts}, {Figures.Exact(answer.SwitchingCostPerMonth)} for changing over" : parts;
    }

    private static string Proof(ShelfAnswer answer) => answer.GapPercent <= ShownGapPercent
        ? "Proven: no shelf within the rules costs less."
        : $"Not proven: no shelf within the rules costs less than {Figures.Exact(answer.Bound)}, so this one is at most {ShownUnit.Percent.Write(answer.GapPercent)} too dear.";

    private static string Change(ShelfChange change)
    {
        var drop = change.Drop.Count > 0 ? $"Drop {List(change.Drop)}. " : "";
        var take = change.Try.Count > 0 ? $"Try {List(change.Try)}. " : "";
        var same = change.Drop.Count + change.Try.Count + change.Resize.Count == 0 ? "Today's shelf is the one to keep. " : "";
        var saves = change.SavesPerMonth switch
        {
            null => "Today's shelf does not serve every job.",
            > 0 and var saved => $"Against today's shelf, which costs {Figures.Exact(change.TodayMonthlyCost!.Value)}, that saves {Figures.Exact(saved)} a month.",
            < 0 and var saved => $"Today's shelf costs {Figures.Exact(-saved)} a month less, but breaks a rule of the case.",
            _ => $"It costs {Figures.Exact(change.TodayMonthlyCost!.Value)} a month.",
        };
        var resize = string.Concat(change.Resize.Select(resize => $"Buy {resize.Emulsion} by {Figures.Exact(resize.ToGrams)} g, not {Figures.Exact(resize.FromGrams)} g. "));
        return $"{same}{drop}{take}{resize}{saves}";
    }

    private static IEnumerable<string> Sizes(ShelfAnswer answer)
    {
        foreach (var use in answer.Uses)
        {
            if (use.Size is not { } size)
                continue;
            var next = size is { NextGrams: { } grams, NextExtra: { } extra } ? $" by {Figures.Exact(grams)} g the same screens would cost {Figures.Exact(extra)} a month more." : " it is sold in no other size.";
            yield return $"Buy {use.Emulsion} by {Figures.Exact(size.Grams)} g at {Figures.Exact(size.Price)};{next}";
        }
    }

    private static IEnumerable<string> Others(ShelfAnswer answer)
    {
        if (answer.SecondBest is { } second)
            yield return $"The next best shelf ({List(second.Keep)}) {Dearer(second)}.";
        if (answer.OneMore is { } more)
            yield return $"Keeping one more ({List(more.Keep)}) {Dearer(more)}.";
        if (answer.OneFewer is { } fewer)
            yield return $"Keeping one fewer ({List(fewer.Keep)}) {Dearer(fewer)}.";
        else if (answer.Keep.Count > 1)
            yield return "With one fewer not every job can be made.";
    }

    private static string Dearer(OtherShelf other)
    {
        var sure = other.MonthlyCost - other.Bound <= ShownGapPercent / 100 * Math.Abs(other.MonthlyCost) ? "" : $" (the cheapest of its kind costs {Figures.Exact(other.Bound)} or more)";
        return other.Extra >= 0 ? $"costs {Figures.Exact(other.Extra)} a month more{sure}" : $"would cost {Figures.Exact(-other.Extra)} a month less{sure}, but the case does not allow it";
    }

    private static string List(IReadOnlyList<string> ids) => string.Join(", ", ids);
}
