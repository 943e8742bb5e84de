using Silkwright.Estimates;
using Spectre.Console;

namespace Silkwright.Cli.Printing;

/// <summary>What was assumed, under the table it belongs to.</summary>
internal static class Notes
{
    public static void Print(IReadOnlyList<Note> notes, IAnsiConsole console)
    {
        if (notes.Count == 0)
            return;
        console.WriteLine("Assumed and worth knowing");
        foreach (var note in notes)
        {
            var mark = note.Ground is { } ground ? $"{GroundMark.Mark(ground)} " : "- ";
            console.Write(new Padder(new Text(mark + note.Text), new Padding(2, 0, 0, 0)));
        }

        console.WriteLine();
    }
}
