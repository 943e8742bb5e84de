using Silkwright.Cli.Printing;
using Silkwright.Drying;
using Silkwright.Estimates;
using Spectre.Console;

namespace Silkwright.Cli.Commands.Dry;

/// <summary>A drying time for people.</summary>
internal static class DryingTable
{
    /// <summary>Characters of the longest bar of the curve.</summary>
    private const int BarCharacters = 50;

    /// <summary>Points of the curve that are drawn.</summary>
    private const int DrawnPoints = 10;

    public static void Print(DryingResult drying, IAnsiConsole console)
    {
        var sheet = new Sheet().Add("Dry to the touch after", drying.MinutesToTouchDry, ShownUnit.Minutes);
        if (drying.MinutesToSafe is { } safe)
            sheet.Add("Safe to expose after", safe, ShownUnit.Minutes);
        else
            sheet.Say("Safe to expose", "never in this air");
        sheet.Add("Risk that a film sticks", drying.StickRiskPercent, ShownUnit.Chance).Print(console);
        console.WriteLine(drying.StickReason);
        console.WriteLine();
        Curve(drying, console);
        Notes.Print(drying.Notes, console);
    }

    private static void Curve(DryingResult drying, IAnsiConsole console)
    {
        console.WriteLine("Water left, as a share of the dry coat");
        var most = drying.Curve.Max(point => point.MoisturePercent);
        var every = Math.Max(1, (drying.Curve.Count - 1) / DrawnPoints);
        foreach (var point in drying.Curve.Where((_, i) => i % every == 0))
        {
            var bar = new string('▬', (int)Math.Round(BarCharacters * point.MoisturePercent / Math.Max(most, double.Epsilon)));
            console.WriteLine($"{Figures.Minutes(point.Minutes),10}  {bar} {ShownUnit.Percent.Write(point.MoisturePercent)}");
        }

        console.WriteLine();
    }
}
