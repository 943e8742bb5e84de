using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Exposure;
using Spectre.Console;

namespace Silkwright.Cli.Commands.Expose;

/// <summary>Cured depth by dose, for people.</summary>
internal static class CurveTable
{
    private const int BarCharacters = 40;

    public static void Print(CureCurve curve, IAnsiConsole console)
    {
        if (curve is { DepthUm: { } depth, DoseForDepth: { } dose })
            console.WriteLine($"{ShownUnit.Micrometres.WriteBoth(depth)} cure at {Figures.Value(dose)} mJ/cm²{Figures.InBrackets(Figures.Interval(dose))}.");
        var deepest = curve.Points.Max(point => point.DepthUm.High);
        var table = new Table { Border = TableBorder.Simple }.AddColumns("mJ/cm²", "cured", "usually within", "");
        foreach (var point in curve.Points.Where((_, i) => i % 2 == 0))
        {
            table.AddRow(
                Figures.Exact(point.DoseMjPerCm2), ShownUnit.Micrometres.Write(point.DepthUm), ShownUnit.Micrometres.WriteRange(point.DepthUm),
                new string('█', (int)Math.Round(BarCharacters * point.DepthUm.Value / deepest)));
        }

        console.Write(table);
        Notes.Print([.. CurveDocument.NotesOn(curve)], console);
    }
}
