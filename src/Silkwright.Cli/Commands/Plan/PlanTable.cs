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
        var told = new Dictionary<string, string>();
        for (var i = 0; i < plan.Colours.Count; i++)
            new ColourTable(plan.Colours[i], i + 1, plan.Job, plan.Currency, console, told).Print(plan.Colours.Count);
        Notes.Print(plan.Notes, console);
    }

    private static void Head(StencilPlan plan, IAnsiConsole console)
    {
        var job = plan.Job;
        var due = job.DueDate is { } day ? $", due {day:yyyy-MM-dd}" : "";
        Prose.Write(console, "", $"{job.Name}: {Figures.Whole(job.Run)} pieces, {Count(plan.Colours.Count, "colour")}{due}");
        Prose.Write(console, "", $"{plan.ShopName}, planned for {job.Date:yyyy-MM-dd}");
        var lines = new PlanLines(console);
        lines.Station("JOB");
        lines.Say($"{Count(plan.Screens, "screen")} to make, spares included");
        lines.Figure("Hands-on time", plan.Minutes, ShownUnit.Minutes);
        lines.Figure("Expected cost", plan.Cost, new ShownUnit(plan.Currency));
        foreach (var remark in plan.Films.Remarks)
            lines.Say(remark);
        if (plan.MeasureNext is { } next)
            lines.Say($"Worth measuring next: {next.What} It takes {Figures.Minutes(next.Minutes)} and narrows {next.Changes}. {next.Because}");
        lines.Station("DETAIL");
        foreach (var colour in plan.Colours)
            lines.Say(Verdict(colour));
        console.WriteLine();
        console.WriteLine($"Each figure: the value, between what it usually lies (9 times in 10), and where it comes from:");
        console.WriteLine($"  {string.Join("   ", Enum.GetValues<Ground>().Select(GroundMark.Both))}");
        console.WriteLine();
    }

    /// <summary>Whether the mesh holds the artwork, and the ways out where it does not.</summary>
    private static string Verdict(ColourPlan colour) => BareFilm.Is(colour.Colour.Film)
        ? $"{colour.Colour.Name}: NO ARTWORK is on its film. Look at the file before anything is coated."
        : colour.Detail.Remedy is { } remedy
        ? $"{colour.Colour.Name}: {colour.Mesh.Fabric.Name} DOES NOT HOLD the artwork. {remedy.Sentence}"
        : $"{colour.Colour.Name}: {colour.Mesh.Fabric.Name} holds the artwork.";

    private static string Count(int number, string what) => number == 1 ? $"1 {what}" : $"{number} {what}s";
}
