using Silkwright.Cli.Printing;
using Silkwright.Ink;
using Spectre.Console;

namespace Silkwright.Cli.Commands.Ink;

/// <summary>Ink laid and used, for people.</summary>
internal static class InkTable
{
    public static void Print(InkResult ink, IAnsiConsole console)
    {
        new Sheet()
            .Add("Wet deposit", ink.WetDepositUm, ShownUnit.Micrometres)
            .Add("Dry deposit", ink.DryDepositUm, ShownUnit.Micrometres)
            .Add("An impression takes", ink.GramsPerImpression, ShownUnit.Grams)
            .Add("The run takes", ink.InkGrams, ShownUnit.Grams)
            .Print(console);
        Notes.Print(ink.Notes, console);
    }
}
