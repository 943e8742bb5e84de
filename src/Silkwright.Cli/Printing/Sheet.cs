using Silkwright.Estimates;
using Spectre.Console;

namespace Silkwright.Cli.Printing;

/// <summary>A table of figures: what, how much, between what, the same in the other units, and where it comes from.</summary>
internal sealed class Sheet
{
    private readonly Table table = new Table { Border = TableBorder.Simple }
        .AddColumns("", "figure", "usually within", "US units", "comes from");

    /// <summary>A figure that follows from a definition.</summary>
    public Sheet Exact(string what, double value, ShownUnit unit)
    {
        table.AddRow(Text(what), Text(unit.Write(value)), Text(""), Text(unit.WriteUs(value)), Text("definition"));
        return this;
    }

    /// <summary>A figure with its interval and ground; nothing is added for one that could not be had.</summary>
    public Sheet Add(string what, Estimate? estimate, ShownUnit unit)
    {
        if (estimate is null)
            return this;
        var range = estimate.Low < estimate.High ? $"{unit.WriteRange(estimate.Low, estimate.High)}" : "";
        table.AddRow(
            Text(what), Text(unit.Write(estimate.Value)), Text(range), Text(unit.WriteUs(estimate.Value)), Text(GroundMark.Both(estimate.Ground)));
        return this;
    }

    /// <summary>A word in place of a figure.</summary>
    public Sheet Say(string what, string word)
    {
        table.AddRow(Text(what), Text(word), Text(""), Text(""), Text(""));
        return this;
    }

    public void Print(IAnsiConsole console) => console.Write(table);

    private static Text Text(string text) => new(text);
}
