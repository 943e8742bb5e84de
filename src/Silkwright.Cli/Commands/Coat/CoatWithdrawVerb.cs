using System.CommandLine;
using System.Globalization;
using Silkwright.Cli.Printing;
using Silkwright.Records.Coating;

namespace Silkwright.Cli.Commands.Coat;

/// <summary><c>silkwright coat withdraw</c>.</summary>
internal static class CoatWithdrawVerb
{
    public static Verb Create(Surroundings surroundings)
    {
        var verb = new Verb("withdraw", "Takes kept experience back: it stays on record, with who and why, and teaches no more.")
        {
            Examples = [("silkwright coat withdraw 1 --data data --by \"Ines Tarrow\" --why \"their newer file takes its place\"", "what was kept first")],
            GoodToKnow = "A shop's newer file takes the place of its older: withdraw that, then keep the newer.",
        };
        var number = new Argument<int>("NUMBER") { Description = "its number, as coat keep told it" };
        var by = new Option<string>("--by") { Description = "who takes it back, by name", HelpName = "NAME", Required = true };
        var why = new Option<string>("--why") { Description = "why, in a few words", HelpName = "WORDS", Required = true };
        var (data, json) = (RecordsFolder.Option(), Answer.JsonOption());
        verb.Add(number);
        verb.Add(by);
        verb.Add(why);
        verb.Add(data);
        verb.Add(json);
        verb.SetAction(async (parse, cancel) =>
        {
            var records = (await RecordsFolder.OpenAsync(parse.GetRequiredValue(data), surroundings, cancel)).CoatExperience;
            await records.WithdrawAsync(parse.GetValue(number), parse.GetRequiredValue(by), parse.GetRequiredValue(why), cancel: cancel);
            if (parse.GetValue(json))
                Answer.WriteJson(KeptExperienceDocument.Of(await records.HistoryAsync(cancel: cancel)), surroundings);
            else
                await surroundings.Output.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"Experience {parse.GetValue(number)} teaches no more."));
            return ExitCode.Done;
        });
        return verb;
    }
}
