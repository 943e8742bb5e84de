using System.CommandLine;

namespace Silkwright.Cli;

/// <summary>A command that answers a question, with what its help teaches beyond the options.</summary>
internal sealed class Verb(string name, string answers) : Command(name, answers)
{
    /// <summary>Command lines that work, each with a word on what it shows.</summary>
    public IReadOnlyList<(string Line, string Shows)> Examples { get; init; } = [];

    /// <summary>What a reader should know before believing the answer.</summary>
    public string? GoodToKnow { get; init; }
}
