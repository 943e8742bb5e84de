using Silkwright.Cli.Commands.Plan;
using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Exposure;
using Spectre.Console;

namespace Silkwright.Cli.Commands.Expose;

/// <summary>An exposure window for people.</summary>
internal static class WindowTable
{
    public static void Print((ExposureCase Case, ExposureWindow Window) answer, IAnsiConsole console)
    {
        Print(answer.Window, console);
        Notes.Print(answer.Window.Notes, console);
    }

    /// <summary>The caution, the window and what would open it; without its notes.</summary>
    internal static void Print(ExposureWindow window, IAnsiConsole console)
    {
        var unit = window.Counts == ExposureCount.Seconds ? ShownUnit.Seconds : ShownUnit.Units;
        Cautions.Print([LampCaution.BeforeExposing], console);
        Prose.Write(console, "", window.Aim is { } aim
            ? $"Aim at {unit.Write(aim)} ({Figures.Interval(aim)}); the wedge should show step {Figures.Plain(window.SolidStepAtAim ?? StepWedge.UsualSolidStep, 0)} solid. The window is {Figures.Plain(window.LatitudeStops)} stops wide."
            : "No exposure cures through and still holds the detail.");
        Prose.Write(console, "", AimWords.Of(window));
        foreach (var line in ExposurePicture.Lines(window, unit))
            console.WriteLine($"  {line}");
        new Sheet()
            .Add("Least that cures through", window.Least, unit)
            .Add("Aim", window.Aim, unit)
            .Add("Most that holds the detail", window.Most, unit)
            .Add(window.Aim is null ? "Finest line held at the least" : "Finest line held at the aim", window.FinestHeldUm, ShownUnit.Micrometres)
            .Print(console);
        if (window.OpensBy.Count == 0)
            return;
        console.WriteLine("What would open it");
        foreach (var way in window.OpensBy)
            Prose.Write(console, "  - ", way);
        console.WriteLine();
    }
}
