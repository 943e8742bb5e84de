using System.Globalization;
using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Gauging;
using Spectre.Console;

namespace Silkwright.Cli.Commands.Gauge;

/// <summary>A gauge study for people.</summary>
internal static class GaugeStudyTable
{
    private static readonly ShownUnit Classes = new("classes");

    public static void Print(GaugeStudyAnswer answer, IAnsiConsole console)
    {
        var study = answer.Study;
        Print(study.Figures, console);
        if (study.Needed is { } needed)
            Prose.Write(console, "", Needed(needed));
        foreach (var outlier in study.Outliers)
        {
            Prose.Write(console, "  ! ", Text($"Line {outlier.Reading.Line}: {outlier.Reading.ValueUm:0.##} µm of {outlier.Reading.Part} by {outlier.Reading.Operator} lies {Math.Abs(outlier.OffUm):0.##} µm {(outlier.OffUm > 0 ? "above" : "below")} what the other readings make expected ({Math.Abs(outlier.Studentised):0.0} of its own deviations; by chance once in {1 / Math.Max(outlier.Chance, 1e-6):0} such studies)."));
        }

        if (study.WithoutOutliers is { } without)
        {
            console.WriteLine("Without the flagged readings");
            Print(without, console);
        }

        foreach (var (screen, pairing) in answer.Pairs)
            Prose.Write(console, "  ", Text($"{screen}: {pairing.EomUm:0.##} µm over mesh{(pairing.StandardErrorUm is { } error ? Text($", standard error {error:0.##} µm") : "")}, {(pairing.Pairs > 0 ? $"{pairing.Pairs} places paired" : "means paired")}."));
        GaugeReadTable.PrintRefusals(answer.File, console);
        Notes.Print([.. study.Notes, .. answer.File.Notes], console);
    }

    /// <summary>How many readings, in a sentence.</summary>
    public static string Needed(ReadingsNeeded needed) => needed.OneHand is not { } one
        ? Text($"No number of readings that anybody would take brings a mean within ±{needed.WantedUm:0.##} µm.")
        : Text($"For ±{needed.WantedUm:0.##} µm: {one} {(one == 1 ? "reading" : "readings")} by one person{(needed.OneHandAtWorst is { } worst && worst > one ? $" ({worst} to be safe)" : "")}, against that person's own. What this person reads high or low does not shrink; free of it: {(needed.Hands is { } hands ? $"{hands} {(hands == 1 ? "person" : "people")}, a reading each" : "more people than can be had")}.");

    private static void Print(StudyFigures figures, IAnsiConsole console)
    {
        var sheet = new Sheet()
            .Add("repeatability: the same hand again", figures.RepeatabilityUm, ShownUnit.Micrometres)
            .Add("reproducibility: another hand", figures.ReproducibilityUm, ShownUnit.Micrometres)
            .Add("  of it, high or low throughout", figures.OperatorUm, ShownUnit.Micrometres)
            .Add("  of it, on some parts", figures.InteractionUm, ShownUnit.Micrometres)
            .Add("gauge in these hands", figures.GaugeUm, ShownUnit.Micrometres)
            .Add("the parts themselves", figures.PartUm, ShownUnit.Micrometres)
            .Add("everything", figures.TotalUm, ShownUnit.Micrometres)
            .Add("gauge of everything", figures.GaugePercent, ShownUnit.Percent)
            .Add("classes it can tell apart", figures.Classes, Classes);
        if (figures.Variances.DistinctClasses is { } classes)
            sheet.Say("distinct classes", $"{classes}{(classes >= 5 ? "" : ": fewer than 5, too few to steer by")}");
        sheet.Print(console);
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
