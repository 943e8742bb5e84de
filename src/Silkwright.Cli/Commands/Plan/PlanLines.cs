using Silkwright.Cli.Printing;
using Silkwright.Estimates;
using Spectre.Console;

namespace Silkwright.Cli.Commands.Plan;

/// <summary>The lines of a plan: a station's name at the left once, its words and figures beside it.</summary>
internal sealed class PlanLines(IAnsiConsole console)
{
    private const int StationWidth = 9;
    private const int NameWidth = 24;
    private const int FigureWidth = 21;
    private const int RangeWidth = 25;

    private string station = "";

    /// <summary>Begins a station; its name stands before its first line.</summary>
    public void Station(string name) => station = name;

    public void Say(string text) => Prose.Write(console, Margin(), text);

    /// <summary>A figure in both worlds' units, its interval and its ground; nothing for one that could not be had.</summary>
    public void Figure(string name, Estimate? estimate, ShownUnit unit)
    {
        if (estimate is null)
            return;
        Line($"{name,-NameWidth} {unit.WriteBoth(estimate),-FigureWidth} {unit.WriteRange(estimate),-RangeWidth} {GroundMark.Both(estimate.Ground)}");
    }

    /// <summary>A weight, in kilograms from one kilogram on.</summary>
    public void Weight(string name, Estimate? grams)
    {
        if (grams?.Value >= 1000)
            Figure(name, grams.Times(0.001), ShownUnit.Kilograms);
        else
            Figure(name, grams, ShownUnit.Grams);
    }

    /// <summary>A line that is not broken: a picture.</summary>
    public void Line(string text) => console.WriteLine(Margin() + text.TrimEnd());

    /// <summary>A caution in full, or its hazard and where the full text stands.</summary>
    public void Caution(Caution caution, string? inFullAt) => Prose.Write(
        console, Margin() + "! ", $"{Cautions.Head(caution)}: {(inFullAt is null ? caution.Text : $"{caution.Hazard} In full at {inFullAt}.")}");

    private string Margin()
    {
        var margin = station.PadRight(StationWidth);
        station = "";
        return margin;
    }
}
