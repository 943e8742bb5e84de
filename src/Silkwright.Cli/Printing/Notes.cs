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
            Prose.Write(console, note.Ground is { } ground ? $"  {GroundMark.Mark(ground)} " : "  - ", note.Text);
        console.WriteLine();
    }
}
