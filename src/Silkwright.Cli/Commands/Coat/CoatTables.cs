using Silkwright.Cli.Printing;
using Silkwright.Coating.Learning;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Spectre.Console;

namespace Silkwright.Cli.Commands.Coat;

/// <summary>Coats and readings for people.</summary>
internal static class CoatTables
{
    /// <summary>Groups shown: those that stand out most; a program gets all.</summary>
    private const int MostEffects = 12;
    private const int MostFlags = 12;

    public static void Print(CoatAnswer answer, IAnsiConsole console)
    {
        var table = new Table { Border = TableBorder.Simple }.AddColumns("", "shop, hand, trough", "emulsion, mesh, strokes", "one reading, µm", "nine of ten", "mean of such coats");
        foreach (var (row, eom, mean) in answer.Cases)
        {
            table.AddRow(
                GroundMark.Mark(eom.Ground).EscapeMarkup(),
                Words(row.Coat.Shop, row.Coat.Operator, row.Coat.Trough.Id).EscapeMarkup(),
                Words(row.Coat.Emulsion.Id, row.Coat.Mesh.Fabric.Name, StrokeText.Write(row.Coat.Strokes)).EscapeMarkup(),
                Figures.Value(eom), Figures.Interval(eom), $"{Figures.Value(mean)}{Figures.InBrackets(Figures.Interval(mean))}");
        }

        console.Write(table);
        var effects = new Table { Border = TableBorder.Simple }.AddColumns("lays otherwise than its like", "", "µm", "±");
        foreach (var effect in answer.Effects.OrderByDescending(effect => Math.Abs(effect.EomUm) / effect.StandardErrorUm).Take(MostEffects))
            effects.AddRow(effect.Group.EscapeMarkup(), effect.Name.EscapeMarkup(), $"{(effect.EomUm < 0 ? "" : "+")}{Figures.Plain(effect.EomUm)}", Figures.Plain(Estimate.UsualHalfWidth * effect.StandardErrorUm));
        if (answer.Effects.Count > 0)
            console.Write(effects);
        if (answer.RepeatabilityUm is { } repeats)
            Prose.Write(console, "Gauge: ", $"one place read again differs by {Figures.Value(repeats)} µm (one standard deviation; {Figures.Interval(repeats)}).");
        Flags(answer.Flags, console);
        Notes.Print(answer.Notes, console);
    }

    public static void Print(CoatReadingsNeeded needed, IAnsiConsole console)
    {
        var worst = needed.NeededAtWorst is { } most && most > needed.Needed ? $"; {most} where the gauge is as loose as it may be" : "";
        Prose.Write(console, "", needed.Needed is { } count
            ? $"{count} reading{(count == 1 ? "" : "s")} bring{(count == 1 ? "s" : "")} the mean within ±{Figures.Plain(needed.WantedUm)} µm in nine of ten cases{worst}."
            : "More than a thousand readings: a closer gauge, or a wider wish.");
        Prose.Write(console, "", $"One reading scatters by {Figures.Value(needed.SpreadUm)} µm (one standard deviation; {Figures.Interval(needed.SpreadUm)}).");
        console.WriteLine();
        Flags(needed.Flags, console);
        Notes.Print(needed.Notes, console);
    }

    public static void Print((IReadOnlyList<CoatRow> Cases, IReadOnlyList<ReadingWorth> Worths, IReadOnlyList<CoatFlag> Flags, IReadOnlyList<Note> Notes) answer, IAnsiConsole console)
    {
        var best = answer.Worths[0];
        var (before, after) = best.Narrowed[best.Case];
        Prose.Write(console, "Read next: ", $"{WordsOf(answer.Cases[best.Case])}. It narrows its own coat from ±{Figures.Plain(before)} to ±{Figures.Plain(after)} µm, and all {answer.Cases.Count} together by {Figures.Plain(best.ShrinksUm)} µm.");
        var table = new Table { Border = TableBorder.Simple }.AddColumns("read one of", "its own ±, µm", "after", "all narrow by, µm", "by minute");
        foreach (var worth in answer.Worths.Take(MostEffects))
            table.AddRow(WordsOf(answer.Cases[worth.Case]).EscapeMarkup(), Figures.Plain(worth.Narrowed[worth.Case].BeforeUm), Figures.Plain(worth.Narrowed[worth.Case].AfterUm), Figures.Plain(worth.ShrinksUm), Figures.Plain(worth.PerMinuteUm));
        console.Write(table);
        Flags(answer.Flags, console);
        Notes.Print(answer.Notes, console);
    }

    public static void Print(CoatAimAnswer answer, IAnsiConsole console)
    {
        var best = answer.Aim.Best;
        Prose.Write(console, "", $"{StrokeText.Write(best.Coat.Strokes)}{CoatAimWords.Hand(best)}: {Figures.Plain(Math.Round(2 * best.MeanUm.Value) / 2)} µm, {CoatAimWords.Percent(best.ChancePercent)} within {Figures.Plain(answer.WantedUm)} ± {Figures.Plain(answer.ToleranceUm)} µm.");
        Prose.Write(console, "", $"{Figures.Value(answer.GramsPerScreen)} g on a screen{Figures.InBrackets(Figures.Interval(answer.GramsPerScreen))}; a litre coats {Figures.Value(answer.M2PerLitre)} m²{Figures.InBrackets(Figures.Interval(answer.M2PerLitre))}.");
        console.WriteLine();
        console.WriteLine("Because");
        foreach (var sentence in CoatAimWords.Because(answer))
            Prose.Write(console, "  - ", sentence);
        console.WriteLine();
        Notes.Print(answer.Notes, console);
    }

    public static void Print(CoatExperienceAnswer answer, IAnsiConsole console)
    {
        var taught = answer.Experience;
        Prose.Write(console, "", $"What {Figures.Whole(taught.Readings)} readings of {Figures.Whole(taught.Shops)} shop{(taught.Shops == 1 ? "" : "s")} taught of any shop's coats:");
        var table = new Table { Border = TableBorder.Simple }.AddColumns("", "", "off what is believed", "±");
        foreach (var (effect, deviations, error) in taught.Shares())
            table.AddRow(effect.Group.EscapeMarkup(), effect.Name.EscapeMarkup(), $"{(deviations < 0 ? "" : "+")}{Figures.Plain(deviations)}", Figures.Plain(Estimate.UsualHalfWidth * error));
        console.Write(table);
        Prose.Write(console, "", "In standard deviations of what is believed of each; ± holds nine of ten.");
        console.WriteLine();
        Flags(answer.Flags, console);
        Notes.Print(answer.Notes, console);
    }

    private static string WordsOf(CoatRow row) =>
        Words(row.Coat.Shop, row.Coat.Operator, row.Coat.Trough.Id, row.Coat.Emulsion.Id, row.Coat.Mesh.Fabric.Name, StrokeText.Write(row.Coat.Strokes));

    private static void Flags(IReadOnlyList<CoatFlag> flags, IAnsiConsole console)
    {
        if (flags.Count == 0)
            return;
        console.WriteLine("Look at these readings again");
        foreach (var flag in flags.OrderBy(flag => flag.Used).Take(MostFlags))
            Prose.Write(console, $"  line {flag.Line}, {flag.Column}: ", $"{flag.What} {flag.Remedy}");
        if (flags.Count > MostFlags)
            console.WriteLine($"  and {flags.Count - MostFlags} more; --json has them all.");
        console.WriteLine();
    }

    private static string Words(params string?[] words) => string.Join(", ", words.Where(word => !string.IsNullOrEmpty(word)));
}
