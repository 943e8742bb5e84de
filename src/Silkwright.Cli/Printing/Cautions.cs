using Silkwright.Estimates;
using Spectre.Console;

namespace Silkwright.Cli.Printing;

/// <summary>Cautions, each before the step it belongs to.</summary>
internal static class Cautions
{
    public static void Print(IEnumerable<Caution> cautions, IAnsiConsole console)
    {
        foreach (var caution in cautions)
            console.Write(new Padder(new Text($"! {Names(caution.Level)} {Lower(caution.Step)}: {caution.Text}"), new Padding(2, 0, 2, 0)));
    }

    private static string Names(CautionLevel level) => level switch
    {
        CautionLevel.Warning => "WARNING",
        CautionLevel.Caution => "CAUTION",
        _ => "NOTICE",
    };

    private static string Lower(string step) => char.ToLowerInvariant(step[0]) + step[1..];
}
