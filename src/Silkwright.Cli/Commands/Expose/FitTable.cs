using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Exposure;
using Spectre.Console;

namespace Silkwright.Cli.Commands.Expose;

/// <summary>A fitted working curve for people.</summary>
internal static class FitTable
{
    public static void Print(DepthFit fit, IAnsiConsole console)
    {
        var table = new Table { Border = TableBorder.Simple }.AddColumns("", "penetration depth", "critical dose");
        Add("robust", fit.Robust);
        Add("least squares", fit.Least);
        console.Write(table);
        Notes.Print([.. FitDocument.NotesOn(fit)], console);

        void Add(string how, WorkingCurveFit by) => table.AddRow(
            how,
            $"{Figures.Exact(by.Curve.PenetrationDepthUm)} µm ± {Figures.Exact(by.PenetrationDepthStandardErrorUm)}",
            $"{Figures.Exact(by.Curve.CriticalDoseMjPerCm2)} mJ/cm² ± {Figures.Exact(by.CriticalDoseStandardErrorMjPerCm2)}");
    }
}
