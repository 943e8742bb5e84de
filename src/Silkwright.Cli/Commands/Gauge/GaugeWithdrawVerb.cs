using System.CommandLine;
using System.Globalization;
using Silkwright.Cli.Printing;
using Silkwright.Records.Gauging;

namespace Silkwright.Cli.Commands.Gauge;

/// <summary><c>silkwright gauge withdraw</c>.</summary>
internal static class GaugeWithdrawVerb
{
    public static Verb Create(Surroundings surroundings)
    {
        var verb = new Verb("withdraw", "Takes a kept reading back: it stays on record, with who and why, and counts no more.")
        {
            Examples = [("silkwright gauge withdraw 12 --data data --by \"Ines Tarrow\" --why \"the gauge stood on a thread\"", "one of the demonstration's readings")],
            GoodToKnow = "Its number stands at /api/gauge/readings. To put a reading right, withdraw it and keep the right one.",
        };
        var number = new Argument<int>("NUMBER") { Description = "the reading's number" };
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
            var records = (await RecordsFolder.OpenAsync(parse.GetRequiredValue(data), surroundings, cancel)).Gauging;
            await records.WithdrawAsync(parse.GetValue(number), parse.GetRequiredValue(by), parse.GetRequiredValue(why), cancel: cancel);
            if (parse.GetValue(json))
                Answer.WriteJson(KeptReadingsDocument.Of(await records.HistoryAsync(cancel: cancel)), surroundings);
            else
                await surroundings.Output.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"Reading {parse.GetValue(number)} counts no more."));
            return ExitCode.Done;
        });
        return verb;
    }
}
