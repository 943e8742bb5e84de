using System.Globalization;
using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Gauging;
using Spectre.Console;

namespace Silkwright.Cli.Commands.Gauge;

/// <summary>Control charts for people.</summary>
internal static class GaugeChartTable
{
    public static void Print(CoatHistory history, IAnsiConsole console)
    {
        var said = GaugeChartDocument.Said(history);
        foreach (var sentence in said.DefaultIfEmpty("No change of the coat that these readings could show."))
            Prose.Write(console, "", sentence);
        console.WriteLine();
        var table = new Table { Border = TableBorder.Simple }.AddColumns("", "coats", "one scatters by", "last average", "limits", "changed since", "by", "chance");
        foreach (var chart in history.Charts)
        {
            var last = chart.Points.Count > 0 ? chart.Points[^1] : null;
            string[] cells =
            [
                CoatWords.Who(chart), Plain(chart.Readings.Count), Um(chart.DeviationUm), last is null ? "" : Um(last.Average), last is null ? "" : $"{Um(last.Low)} to {Um(last.High)}",
                chart.Since is { } since ? Figures.Day(since) : "", chart.ChangeUm is { } change ? $"{Figures.Value(change)} µm ({Figures.Interval(change)})" : "",
                chart.ChancePercent is { } chance ? $"{chance.ToString("0", CultureInfo.InvariantCulture)} %" : "",
            ];
            table.AddRow(cells.Select(cell => new Text(cell)));
        }

        console.Write(table);
        Notes.Print(history.Notes, console);
    }

    private static string Plain(int count) => count.ToString(CultureInfo.InvariantCulture);

    private static string Um(double um) => $"{um.ToString("0.0", CultureInfo.InvariantCulture)} µm";
}
