using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Exposure;
using Spectre.Console;

namespace Silkwright.Cli.Commands.Expose;

/// <summary>A planned step test for people.</summary>
internal static class LadderTable
{
    public static void Print((LadderPlan Plan, IReadOnlyList<Note> Notes) answer, IAnsiConsole console)
    {
        var plan = answer.Plan;
        var unit = plan.Counts == ExposureCount.Seconds ? ShownUnit.Seconds : ShownUnit.Units;
        Cautions.Print([LampCaution.BeforeExposing], console);
        Prose.Write(console, "", LadderDocument.Why(plan));
        var table = new Table { Border = TableBorder.Simple }.AddColumns("strip", "gets in all", "add", "wedge, if the guess is right");
        for (var i = 0; i < plan.Amounts.Count; i++)
            table.AddRow($"{i + 1}", unit.Write(plan.Amounts[i]), unit.Write(plan.Increments[i]), $"step {Figures.Plain(plan.ExpectedSteps[i], 0)}");
        console.Write(table);
        Notes.Print(answer.Notes, console);
    }
}
