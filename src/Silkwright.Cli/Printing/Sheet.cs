using Silkwright.Estimates;
using Spectre.Console;

namespace Silkwright.Cli.Printing;

/// <summary>A table of figures: what, how much, between what, the same in the other units, and where it comes from.</summary>
internal sealed class Sheet
{
    private readonly Table table = new Table { Border = TableBorder.Simple }
        .AddColumns("", "figure", "usually within", "US units", "comes from");

    /// <summary>A figure that follows from a definition.</summary>
    public Sheet Exact(string what, double value, ShownUnit unit) => Row(what, unit.Write(value), "", unit.WriteUs(value), "definition");

    /// <summary>A figure whose model is good to the digits shown.</summary>
    public Sheet Modelled(string what, double value, ShownUnit unit) =>
        Row(what, unit.Write(value), "", unit.WriteUs(value), GroundMark.Both(Ground.Model));

    /// <summary>A figure with its interval and ground; nothing is added for one that could not be had.</summary>
    public Sheet Add(string what, Estimate? estimate, ShownUnit unit)
    {
        if (estimate is null)
            return this;
        return Row(what, unit.Write(estimate), unit.WriteRange(estimate), unit.WriteUs(estimate), GroundMark.Both(estimate.Ground));
    }

    /// <summary>A word in place of a figure.</summary>
    public Sheet Say(string what, string word) => Row(what, word, "", "", "");

    public void Print(IAnsiConsole console) => console.Write(table);

    private Sheet Row(params IEnumerable<string> cells)
    {
        table.AddRow(cells.Select(cell => new Text(cell)));
        return this;
    }
}
