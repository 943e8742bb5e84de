using System.CommandLine;
using Silkwright.Cli.Printing;
using Silkwright.Records.Screens;
using Silkwright.Records.Store;

namespace Silkwright.Cli.Commands.Screen;

/// <summary><c>silkwright screen show</c>.</summary>
internal static class ScreenShowVerb
{
    public static Command Create(Surroundings surroundings)
    {
        var verb = new Verb("show", "What is on record of a screen: its story, who wrote it, what was corrected.")
        {
            Examples =
            [
                ("silkwright screen show S-0042", "the story of one screen"),
                ("silkwright screen show S-0042 --data data --json", "the same for a program"),
            ],
        };
        var id = new Argument<string>("SCREEN") { Description = "the code on the frame, such as S-0001" };
        var data = RecordsFolder.Option();
        var json = Answer.JsonOption();
        verb.Add(id);
        verb.Add(data);
        verb.Add(json);
        verb.SetAction(async (parse, cancel) =>
        {
            var store = await RecordsFolder.OpenAsync(parse.GetRequiredValue(data), surroundings, cancel);
            await PrintAsync(store, parse.GetRequiredValue(id), parse.GetValue(json), surroundings, cancel);
            return ExitCode.Done;
        });
        return verb;
    }

    /// <summary>Prints a screen as it now stands.</summary>
    public static async Task PrintAsync(SilkwrightStore store, string id, bool json, Surroundings surroundings, CancellationToken cancel)
    {
        var record = await store.Screens.ShowAsync(id, cancel);
        if (json)
            Answer.WriteJson(ScreenDocument.Of(record), surroundings);
        else
            ScreenTable.Print(record, surroundings.Time.LocalTimeZone, Answer.Console(surroundings));
    }
}
