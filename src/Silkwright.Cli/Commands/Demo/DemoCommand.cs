using System.CommandLine;
using Silkwright.Records.Demo;

namespace Silkwright.Cli.Commands.Demo;

/// <summary><c>silkwright demo</c>: draws the demonstration's films and puts its shop into a data folder.</summary>
internal static class DemoCommand
{
    public static Command Create(Surroundings surroundings)
    {
        var verb = new Verb("demo", "Draws the films of the demonstration, an invented shop, and with --data puts the shop into a data folder.")
        {
            Examples =
            [
                ("silkwright demo", "draws the films that are missing into demo/films"),
                ("silkwright demo --data data", "and loads the shop, its jobs and the history of some screens"),
            ],
            GoodToKnow = "Nothing you have changed is overwritten: what is there already stays.",
        };
        var folder = new Option<string?>("--from") { Description = "the demonstration's folder; looked for here and beside the program when not given", HelpName = "FOLDER" };
        var data = new Option<string?>("--data") { Description = "the folder a shop keeps its records in; made where it is missing", HelpName = "FOLDER" };
        verb.Add(folder);
        verb.Add(data);
        verb.SetAction(async (parse, cancel) =>
        {
            var demo = DemoFolder.Find(parse.GetValue(folder));
            var drawn = await demo.DrawMissingFilmsAsync(surroundings, cancel);
            await surroundings.Output.WriteLineAsync(drawn.Count == 0 ? "All films are there." : $"Drawn: {string.Join(", ", drawn)}.");
            if (parse.GetValue(data) is { } path)
            {
                var store = await RecordsFolder.OpenOrBeginAsync(path, surroundings, cancel);
                var loaded = await DemoShop.LoadAsync(store, demo.Path, cancel);
                await surroundings.Output.WriteLineAsync($"In {path}: {loaded.Jobs} jobs and {loaded.Screens} screens of an invented shop.");
            }

            return ExitCode.Done;
        });
        return verb;
    }
}
