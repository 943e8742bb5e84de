using System.CommandLine;
using System.Text.Json.Nodes;
using Silkwright.Contracts;
using Spectre.Console;

namespace Silkwright.Cli.Printing;

/// <summary>Writes an answer: a document for programs, or a table for people.</summary>
internal static class Answer
{
    public static Option<bool> JsonOption() => new("--json")
    {
        Description = "print one JSON document (docs/schema) in place of the table",
    };

    public static void WriteJson(JsonObject document, Surroundings surroundings) =>
        surroundings.Output.WriteLine(document.ToJsonString(DocumentJson.Options));

    /// <summary>A console that draws tables on the answer's writer.</summary>
    public static IAnsiConsole Console(Surroundings surroundings) =>
        On(surroundings.Output, surroundings.OutputIsTerminal, surroundings.Columns);

    /// <summary>A console that draws on any writer; plain text unless a person looks at it.</summary>
    public static IAnsiConsole On(TextWriter writer, bool isTerminal, int columns)
    {
        var console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Out = new AnsiConsoleOutput(writer),
            Ansi = isTerminal ? AnsiSupport.Detect : AnsiSupport.No,
            ColorSystem = isTerminal ? ColorSystemSupport.Detect : ColorSystemSupport.NoColors,
            Interactive = isTerminal ? InteractionSupport.Detect : InteractionSupport.No,
        });
        console.Profile.Width = columns;
        console.Profile.Capabilities.Unicode = true;
        return console;
    }
}
