using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Exposure;
using Spectre.Console;

namespace Silkwright.Cli.Commands.Expose;

/// <summary>A corrected exposure for people.</summary>
internal static class StepTable
{
    public static void Print(StepCorrection correction, IAnsiConsole console)
    {
        var unit = correction.Counts == ExposureCount.Seconds ? ShownUnit.Seconds : ShownUnit.Units;
        Cautions.Print([LampCaution.BeforeExposing], console);
        console.WriteLine($"Expose {unit.Write(correction.Corrected)}, in place of {unit.Write(correction.Given)}:");
        console.WriteLine($"  step {correction.ObservedStep:0.#} was the last solid one, {correction.TargetStep:0.#} is wanted; {correction.Corrected / correction.Given:0.00} times the light.");
        console.WriteLine();
        Notes.Print([.. StepDocument.NotesOn(correction)], console);
    }
}
