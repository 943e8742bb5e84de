using System.Globalization;
using Silkwright.Cli.Printing;
using Silkwright.Estimates;

namespace Silkwright.Cli;

/// <summary>What the shell runs in: where it writes, what time it is. Tests put their own in place.</summary>
internal sealed record Surroundings
{
    /// <summary>Columns taken where no terminal says how wide it is.</summary>
    public const int UsualColumns = 100;

    /// <summary>Answers: tables, or one JSON document.</summary>
    public required TextWriter Output { get; init; }

    /// <summary>Progress, messages, faults.</summary>
    public required TextWriter Error { get; init; }

    /// <summary>A person looks at the messages: progress may be drawn in place.</summary>
    public bool ErrorIsTerminal { get; init; }

    /// <summary>A person looks at the answers.</summary>
    public bool OutputIsTerminal { get; init; }

    /// <summary>Width of tables. [characters]</summary>
    public int Columns { get; init; } = UsualColumns;

    public TimeProvider Time { get; init; } = TimeProvider.System;

    /// <summary>Show where a failure of ours happened.</summary>
    public bool Trace { get; init; }

    /// <summary>Today, by this machine's clock and time zone.</summary>
    public DateOnly Today => DateOnly.FromDateTime(Time.GetLocalNow().DateTime);

    public static Surroundings OfThisProcess()
    {
        // Numbers are written one way whatever the machine's language: JSON and scripts rely on it.
        CultureInfo.DefaultThreadCurrentCulture = CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        if (!Console.IsOutputRedirected || !Console.IsErrorRedirected)
            Console.OutputEncoding = System.Text.Encoding.UTF8;
        return new Surroundings
        {
            Output = new ToldWriter(Console.Out, refusal => throw NoRoom(refusal)),
            // Where messages find no room there is no place left to tell it; the exit code still says how it ended.
            Error = new ToldWriter(Console.Error, _ => { }),
            ErrorIsTerminal = !Console.IsErrorRedirected,
            OutputIsTerminal = !Console.IsOutputRedirected,
            Columns = Console.IsOutputRedirected ? UsualColumns : Math.Clamp(Console.WindowWidth, 60, 140),
            Trace = Environment.GetEnvironmentVariable("SILKWRIGHT_TRACE") == "1",
        };
    }

    private static InputProblemException NoRoom(IOException refusal) => new(new Problem(
        $"The answer could not be written to its end: {refusal.Message.TrimEnd('.')}.", "standard output", "Make room where it goes, or send it elsewhere; then ask again. What is there is cut short."));
}
