using System.CommandLine;

namespace Silkwright.Cli.Commands.Screen;

/// <summary><c>silkwright screen</c>: the append-only record of a screen.</summary>
internal static class ScreenCommand
{
    public static Command Create(Surroundings surroundings)
    {
        var events = new Command("event", "Writes down what happened to a screen. Nothing written is ever changed: a correction is another entry.");
        foreach (var kind in ScreenEventVerbs.All(surroundings))
            events.Add(kind);
        return new Command("screen", "The record of a screen: what it is, what happened to it, who says so.")
        {
            ScreenAddVerb.Create(surroundings),
            events,
            ScreenShowVerb.Create(surroundings),
        };
    }
}
