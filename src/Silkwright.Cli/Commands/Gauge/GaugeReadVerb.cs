using System.CommandLine;
using System.Text;
using System.Text.Json.Nodes;
using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Records.Gauging;

namespace Silkwright.Cli.Commands.Gauge;

/// <summary><c>silkwright gauge read</c>.</summary>
internal static class GaugeReadVerb
{
    public static Verb Create(Surroundings surroundings)
    {
        var verb = new Verb("read", "Reads a gauge's file: what was taken, what is odd, what is given back to be put right. Keeps it where asked.")
        {
            Examples =
            [
                ("silkwright gauge read demo/gauge-history.csv", "a file with one line in the wrong unit and one below its mesh"),
                ("silkwright gauge read demo/gauge-history.csv --data data --by \"Ines Tarrow\"", "kept in the shop's records, to learn from; keeping it twice keeps it once"),
            ],
            GoodToKnow = "Nothing is lost: rows that were not taken are printed, or written with --given-back FILE.csv, each with the reason and what to do.",
        };
        var (file, unit, bare, json) = (GaugeCommand.FileArgument(), GaugeCommand.UnitOption(), GaugeCommand.BareOption(), Answer.JsonOption());
        var back = new Option<string?>("--given-back") { Description = "write the rows that were not taken into a file", HelpName = "FILE.csv" };
        var data = new Option<string?>("--data") { Description = "keep what was taken in this folder's records", HelpName = "FOLDER" };
        var by = new Option<string?>("--by") { Description = "who keeps it, by name; with --data", HelpName = "NAME" };
        verb.Add(file);
        verb.Add(unit);
        verb.Add(bare);
        verb.Add(back);
        verb.Add(data);
        verb.Add(by);
        verb.Add(json);
        verb.SetAction(async (parse, cancel) =>
        {
            var path = parse.GetRequiredValue(file);
            if (parse.GetValue(back) is { } target)
                OutputFile.RefuseInput(target, path, "--given-back");
            var read = await GaugeCommand.ReadAsync(path, parse.GetValue(unit), GaugeCommand.Bare(parse.GetValue(bare)), cancel);
            KeptBatch? kept = null;
            if (parse.GetValue(data) is { } folder && read.Entries.Count > 0)
            {
                if (parse.GetValue(by) is not { } person)
                    throw new InputProblemException(new Problem("Nobody is named.", "--by", "Give the name of the person who keeps the readings."));
                var store = await RecordsFolder.OpenAsync(folder, surroundings, cancel);
                kept = await store.Gauging.KeepFileAsync(read, Path.GetFileName(path), person, cancel: cancel);
            }

            if (parse.GetValue(back) is { } given && read.Refused.Count > 0)
                await OutputFile.WriteAsync(given, Encoding.UTF8.GetBytes(read.RefusedText), cancel);
            if (parse.GetValue(json))
                Answer.WriteJson(Document(read, kept), surroundings);
            else
                GaugeReadTable.Print(read, kept, Answer.Console(surroundings));
            if (read.Entries.Count > 0)
                return ExitCode.Done;
            await surroundings.Error.WriteLineAsync("No reading of the file was taken, and nothing was kept: put right what is given back, and read it again.");
            return ExitCode.BadInput;
        });
        return verb;
    }

    private static JsonObject Document(GaugeFile read, KeptBatch? kept)
    {
        var document = GaugeReadDocument.Of(read);
        document.AddIfThere("kept", kept?.New);
        document.AddIfThere("keptBefore", kept?.Before);
        return document;
    }
}
