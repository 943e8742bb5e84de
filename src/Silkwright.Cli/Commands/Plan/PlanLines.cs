using Silkwright.Cli.Printing;
using Silkwright.Estimates;
using Spectre.Console;

namespace Silkwright.Cli.Commands.Plan;

/// <summary>The lines of a plan: a station's name at the left once, its words and figures beside it.</summary>
internal sealed class PlanLines(IAnsiConsole console)
{
    private const int StationWidth = 9;
    private const int NameWidth = 24;
    private const int FigureWidth = 23;
    private const int RangeWidth = 23;

    private string station = "";

    /// <summary>Begins a station; its name stands before its first line.</summary>
    public void Station(string name) => station = name;

    public void Say(string text) => Prose.Write(console, Margin(), text);

    /// <summary>A figure in both worlds' units, its interval and its ground; nothing for one that could not be had.</summary>
    public void Figure(string name, Estimate? estimate, ShownUnit unit)
    {
        if (estimate is null)
            return;
        var range = estimate.Low < estimate.High ? unit.WriteRange(estimate.Low, estimate.High) : "";
        Line($"{name,-NameWidth} {unit.WriteBoth(estimate.Value),-FigureWidth} {range,-RangeWidth} {GroundMark.Both(estimate.Ground)}");
    }

    /// <summary>A line that is not broken: a picture.</summary>
    public void Line(string text) => console.WriteLine(Margin() + text.TrimEnd());

    public void Caution(Caution caution, bool toldBefore) =>
        Prose.Write(console, Margin() + "! ", toldBefore ? $"{Cautions.Head(caution)}: as told above." : $"{Cautions.Head(caution)}: {caution.Text}");

    private string Margin()
    {
        var margin = station.PadRight(StationWidth);
        station = "";
        return margin;
    }
}
