using System.CommandLine;
using Silkwright.Records.Store;

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

    /// <summary>The folder a shop keeps its records in.</summary>
    public static Option<string> DataOption() => new("--data")
    {
        Description = "the folder the shop keeps its records in; ./data when not given",
        HelpName = "FOLDER",
        DefaultValueFactory = _ => "data",
    };

    public static Task<SilkwrightStore> OpenAsync(string data, Surroundings surroundings, CancellationToken cancel) =>
        SilkwrightStore.OpenAsync(DataFolder.Open(data), surroundings.Time, cancel);
}
