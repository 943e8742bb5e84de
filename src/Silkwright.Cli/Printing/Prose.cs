using Spectre.Console;

namespace Silkwright.Cli.Printing;

/// <summary>Sentences broken at spaces, with a hanging indent.</summary>
internal static class Prose
{
    /// <param name="console">Where to.</param>
    /// <param name="first">Stands before the first line: an indent, a mark.</param>
    /// <param name="text">The sentences.</param>
    public static void Write(IAnsiConsole console, string first, string text)
    {
        var rest = new string(' ', first.Length);
        var line = first;
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Length > first.Length && line.Length + 1 + word.Length > console.Profile.Width)
            {
                console.WriteLine(line);
                line = rest;
            }

            line += line.Length == first.Length ? word : $" {word}";
        }

        console.WriteLine(line);
    }
}
