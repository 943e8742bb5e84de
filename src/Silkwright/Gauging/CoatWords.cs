using System.Globalization;
using Silkwright.Estimates;

namespace Silkwright.Gauging;

/// <summary>What a chart or a difference says, in a sentence.</summary>
public static class CoatWords
{
    private const double UmPerMil = 25.4;

    /// <param name="difference">What is told.</param>
    /// <param name="inMil">Thickness in mil.</param>
    public static string Of(CoatDifference difference, bool inMil = false)
    {
        var than = difference.Grouping switch { ChartGrouping.Operator => "than the others", ChartGrouping.Emulsion => "than other emulsions", _ => "than the other troughs" };
        var since = difference.Since is { } day ? $" since it came on {Figures.Day(day)}" : "";
        var name = $"{(difference.Since is null ? "" : "new ")}{Named(difference.Grouping)}{difference.Name}";
        var also = difference.AlsoIs.Count == 0 ? "" : $" It came only with {string.Join(" and ", difference.AlsoIs)}: which of them it is these readings can't tell.";
        return $"{Capital(name)} coats {Thicker(difference.ThickerUm, inMil)} {than}{(difference.Grouping == ChartGrouping.Operator ? since.Replace("it came", "they came", StringComparison.Ordinal) : since)}. {Chance(difference.ChancePercent)}{also}";
    }

    /// <summary>None where no change is likely.</summary>
    /// <param name="chart">What is told.</param>
    /// <param name="inMil">Thickness in mil.</param>
    public static string? Of(CoatChart chart, bool inMil = false)
    {
        if (chart is not { HasChanged: true, ChangeUm: { } change, Since: { } since, ChancePercent: { } chance })
            return chart.SignalOn is { } signal ? $"{Who(chart)}: the average left its limits on {Figures.Day(signal)}, but no one day explains it." : null;
        return $"{Who(chart)}: {Thicker(change, inMil)} since {Figures.Day(since)}. {Chance(chance)}";
    }

    /// <summary>Whose chart it is.</summary>
    public static string Who(CoatChart chart) => chart.Grouping == ChartGrouping.Shop ? "The shop" : Capital($"{Named(chart.Grouping)}{chart.Name}");

    private static string Named(ChartGrouping grouping) => grouping switch { ChartGrouping.Trough => "trough ", ChartGrouping.Emulsion => "emulsion ", _ => "" };

    private static string Thicker(Estimate change, bool inMil)
    {
        var shown = inMil ? change.Times(1 / UmPerMil) : change;
        var size = shown.Value < 0 ? shown.Times(-1) : shown;
        return $"{Figures.Value(size)} {(inMil ? "mil" : "µm")} {(change.Value < 0 ? "thinner" : "thicker")} ({Figures.Interval(size)})";
    }

    private static string Chance(double percent) => percent > 99
        ? "That this is real is more than 99 % sure."
        : string.Create(CultureInfo.InvariantCulture, $"The chance that this is real: {percent:0} %.");

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
