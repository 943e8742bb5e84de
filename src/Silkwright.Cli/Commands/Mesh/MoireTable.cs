using Silkwright.Cli.Printing;
using Silkwright.Estimates;
using Silkwright.Moire;
using Spectre.Console;

namespace Silkwright.Cli.Commands.Mesh;

/// <summary>Moiré for people.</summary>
internal static class MoireTable
{
    /// <summary>Patterns told; the document has them all.</summary>
    private const int PatternsTold = 6;

    public static void Print(MoireAnswer answer, IAnsiConsole console)
    {
        var asked = answer.Asked;
        console.WriteLine(
            $"Mesh {asked.Mesh.Name} at {Figures.Plain(asked.MeshAngleDegrees)}° with {ShownUnit.PerCm.WriteBoth(asked.RulingPerCm)} at {Figures.Plain(asked.AngleDegrees)}°: {Figures.Plain(asked.ThreadsPerLine, 2)} threads to a line");
        console.WriteLine(answer.Patterns is [var plainest, ..]
            ? $"The plainest beat repeats every {ShownUnit.Millimetres.WriteBoth(plainest.Vector.PeriodMm)}: {MoireWords.Seen(plainest.Visibility)} ({Figures.Plain(plainest.Visibility, 2)}), at worst {Figures.Plain(answer.VisibilityAtWorst, 2)} on a mesh a little off its label."
            : "No beat that an eye could see.");
        var patterns = new Table { Border = TableBorder.Simple }.AddColumns("period", "repeats towards", "orders", "visibility", "");
        foreach (var pattern in answer.Patterns.Take(PatternsTold))
        {
            patterns.AddRow(
                ShownUnit.Millimetres.WriteBoth(pattern.Vector.PeriodMm), $"{Figures.Plain(pattern.Vector.AngleDegrees)}°", MoireWords.Orders(pattern),
                $"{GroundMark.Mark(Ground.Model)} {Figures.Plain(pattern.Visibility, 2)}", MoireWords.Seen(pattern.Visibility));
        }

        console.Write(patterns);
        Choices("film at", answer.BestAngles, choice => $"{Figures.Plain(choice.AngleDegrees)}°", console);
        Choices("ruling", answer.BestRulings, choice => ShownUnit.PerCm.WriteBoth(choice.RulingPerCm), console);
        Choices("mesh", answer.Meshes, choice => choice.Mesh.Name, console);
        Notes.Print(answer.Notes, console);
    }

    private static void Choices(string what, IReadOnlyList<MoireChoice> choices, Func<MoireChoice, string> named, IAnsiConsole console)
    {
        if (choices.Count == 0)
            return;
        var table = new Table { Border = TableBorder.Simple }.AddColumns($"{what}, quietest first", "plainest beat", "visibility", "at worst", "");
        foreach (var choice in choices)
        {
            table.AddRow(
                named(choice),
                choice.Pattern is { } beat ? ShownUnit.Millimetres.WriteBoth(beat.Vector.PeriodMm) : "none",
                Figures.Plain(choice.Pattern?.Visibility ?? 0, 2), Figures.Plain(choice.VisibilityAtWorst, 2), MoireWords.Seen(choice.VisibilityAtWorst));
        }

        console.Write(table);
    }
}
