using System.Globalization;
using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Exposure;
using Spectre.Console;

namespace Silkwright.Cli.Commands.Expose;

/// <summary>Step tests day by day, for people.</summary>
internal static class DriftTable
{
    public static void Print(IReadOnlyList<(ExposureCase Case, ExposureDrift Drift)> histories, IAnsiConsole console)
    {
        if (histories.Count == 0)
            console.WriteLine("No step test of this shop names an emulsion and a lamp that it has.");
        foreach (var (exposure, drift) in histories)
        {
            console.WriteLine($"{exposure.Emulsion.Id} with {exposure.Lamp.Id} on {exposure.Mesh.Name}");
            Print(drift, console);
            Notes.Print(drift.Notes, console);
        }
    }

    internal static void Print(ExposureDrift drift, IAnsiConsole console)
    {
        var unit = drift.Counts == ExposureCount.Seconds ? ShownUnit.Seconds : ShownUnit.Units;
        Prose.Write(console, drift.HasDrifted ? "DRIFT: " : "", DriftDocument.Says(drift));
        foreach (var cause in drift.HasDrifted ? drift.Because : [])
            Prose.Write(console, "  - ", cause);
        var table = new Table { Border = TableBorder.Simple }.AddColumns("day", "least that cured", "off the level", "average", "limits", "");
        foreach (var test in drift.Tests)
        {
            table.AddRow(
                Figures.Day(test.On), $"{unit.Write(test.Least)} ({Figures.Interval(test.Least)})", Percent(test.PercentOff), test.AveragePercent is { } average ? Percent(average) : "",
                test is { LowPercent: { } low, HighPercent: { } high } ? $"{Percent(low)} to {Percent(high)}" : "sets the level", test.IsOut ? "OUT" : "");
        }

        if (drift.Tests.Count > 0)
            console.Write(table);
    }

    private static string Percent(double percent) => percent.ToString("+0;−0;0", CultureInfo.InvariantCulture) + " %";
}
