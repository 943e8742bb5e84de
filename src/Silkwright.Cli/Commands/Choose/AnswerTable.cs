using Silkwright.Answers;
using Silkwright.Choosing;
using Silkwright.Cli.Commands.Plan;
using Silkwright.Cli.Printing;
using Silkwright.Estimates;
using Spectre.Console;
using FinishWords = Silkwright.Plans.FinishWords;

namespace Silkwright.Cli.Commands.Choose;

/// <summary>An answer for people: the recommendation, the others beside it, what would turn it, what to do first.</summary>
internal static class AnswerTable
{
    public static void Print(EmulsionAnswer answer, IAnsiConsole console)
    {
        var lines = new PlanLines(console);
        lines.Station("ASKED");
        lines.Say($"{string.Join(", ", answer.Facts)}.");
        lines.Station("TAKE");
        lines.Say(answer.Plan.Emulsion is { } emulsion ? $"{emulsion.Id} on {answer.Plan.Mesh.Fabric.Name} mesh." : $"None of these may be used. Nearest way out: {answer.Plan.NearestFix}.");
        foreach (var reason in answer.Plan.Because)
            lines.Say(reason);
        if (answer.Comparison is { } comparison)
            Standings(answer, comparison, lines);
        Section("RULED OUT", answer.Plan.Beaten.Where(b => b.RuledOut).Select(b => $"{b.Emulsion.Id}: {b.Why}."), lines);
        if (answer.NotReckoned.Count > 0)
            Section("NOT USED", answer.NotReckoned, lines);
        Section("STOP IF", answer.StopIf, lines);
        Section("MEASURE", answer.MeasureFirst, lines);
        console.WriteLine();
        Cautions.Print(answer.Plan.Cautions, console);
        console.WriteLine();
        Notes.Print(answer.Assumed, console);
    }

    private static void Standings(EmulsionAnswer answer, Comparison comparison, PlanLines lines)
    {
        var money = new ShownUnit(answer.Currency);
        lines.Station("COST");
        for (var i = 0; i < answer.Contenders.Count; i++)
        {
            var contender = answer.Contenders[i];
            var standing = comparison.Standings.First(s => s.Id == contender.Id);
            lines.Figure(contender.Id, contender.Cost.Total, money);
            foreach (var line in CostPicture.Lines(contender.Cost, money))
                lines.Line($"  {line}");
            lines.Say($"  Cheapest in {standing.ChanceBestPercent:0} of 100 cases; at worst {Figures.TwoDigits(standing.WorstRegret)} {answer.Currency} dearer than the best.");
            if (answer.Plan.Beaten.FirstOrDefault(b => b.Emulsion.Id == contender.Id) is { } beaten)
                lines.Say($"  Lost because {beaten.Why}.");
            lines.Say($"  {Bears(answer.Handling[i])}");
            foreach (var option in answer.Handling[i].Finishes)
                lines.Say($"  {(option.Finish == answer.Handling[i].Finish ? "Finish taken" : "Or")}: {FinishWords.Of(option, answer.Currency)}.");
        }

        if (comparison.Robust != comparison.Expected)
            lines.Say($"To be safe from the worst case rather than cheapest on average: {comparison.Robust}.");
        else if (comparison.IsClose)
            lines.Say("The choice is close: the figures that would settle it are under MEASURE.");
    }

    private static string Bears(Handling handling)
    {
        var room = handling.RoomLightMinutes is { } minutes
            ? $"A coated screen may lie {Figures.MinutesInterval(minutes)} in this room's light. "
            : "";
        var either = handling.Forgiveness.SecondsEitherSide is { } seconds ? $", {Figures.TwoDigits(seconds)} s either side of the aim" : "";
        return $"{room}Once a step test has placed its window, {handling.Forgiveness.RightPercent:0} of 100 exposures at the aim land in it{either}.";
    }

    private static void Section(string station, IEnumerable<string> sentences, PlanLines lines)
    {
        lines.Station(station);
        foreach (var sentence in sentences)
            lines.Say($"- {sentence}");
    }
}
