using Silkwright.Cli.Printing;
using Silkwright.Estimates;
using Silkwright.Plans;
using Spectre.Console;

namespace Silkwright.Cli.Commands.Plan;

/// <summary>A whole plan for people: the job, then each colour along the making line, then what was assumed.</summary>
internal static class PlanTable
{
    public static void Print(StencilPlan plan, IAnsiConsole console)
    {
        Head(plan, console);
        var told = new HashSet<Caution>();
        for (var i = 0; i < plan.Colours.Count; i++)
            new ColourTable(plan.Colours[i], plan.Job, plan.Currency, console, told).Print(i + 1, plan.Colours.Count);
        Notes.Print(plan.Notes, console);
    }

    private static void Head(StencilPlan plan, IAnsiConsole console)
    {
        var job = plan.Job;
        var due = job.DueDate is { } day ? $", due {day:yyyy-MM-dd}" : "";
        Prose.Write(console, "", $"{job.Name}: {job.Run:#,0} pieces, {Count(plan.Colours.Count, "colour")}{due}");
        Prose.Write(console, "", $"{plan.ShopName}, planned for {job.Date:yyyy-MM-dd}");
        var lines = new PlanLines(console);
        lines.Station("JOB");
        lines.Say($"{Count(plan.Screens, "screen")} to make, spares included");
        lines.Figure("Hands-on time", plan.Minutes, ShownUnit.Minutes);
        lines.Figure("Expected cost", plan.Cost, new ShownUnit(plan.Currency));
        foreach (var remark in plan.Films.Remarks)
            lines.Say(remark);
        if (plan.MeasureNext is { } next)
            lines.Say($"Worth measuring next: {next.What} It would narrow {next.Changes} and takes {Figures.Of(next.Minutes)} minutes.");
        console.WriteLine();
        console.WriteLine($"Each figure: the value, between what it usually lies (9 times in 10), and where it comes from:");
        console.WriteLine($"  {string.Join("   ", Enum.GetValues<Ground>().Select(GroundMark.Both))}");
        console.WriteLine();
    }

    private static string Count(int number, string what) => number == 1 ? $"1 {what}" : $"{number} {what}s";
}
