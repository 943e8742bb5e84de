using Silkwright.Cli.Printing;
using Silkwright.Estimates;
using Silkwright.Exposure;
using Spectre.Console;

namespace Silkwright.Cli.Commands.Expose;

/// <summary>A step test, read, for people.</summary>
internal static class StepTestTable
{
    public static void Print(StepTestReading reading, IAnsiConsole console)
    {
        var unit = reading.Window.Counts == ExposureCount.Seconds ? ShownUnit.Seconds : ShownUnit.Units;
        WindowTable.Print(reading.Window, console);
        Prose.Write(console, reading.Next.Amount is { } amount ? $"Next strip {Figures.Like(reading.Window.Least, amount)} {unit.Metric}: " : "Next strip: ", reading.Next.Why);
        if (reading.Curve is { } fit)
        {
            Prose.Write(
                console, "Working curve: ",
                $"light falls by e over {Figures.Plain(fit.Curve.PenetrationDepthUm)} µm (± {Figures.Plain(fit.PenetrationDepthStandardErrorUm)}), and {Figures.Exact(fit.Curve.CriticalDoseMjPerCm2)} {unit.Metric} (± {Figures.Exact(fit.CriticalDoseStandardErrorMjPerCm2)}) just cure; standard errors, on this lamp alone.");
        }

        if (reading.History is { } history)
            DriftTable.Print(history, console);
        console.WriteLine();
        Notes.Print(reading.Window.Notes, console);
    }
}
