using System.CommandLine;
using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Gauging;

namespace Silkwright.Cli.Commands.Gauge;

/// <summary><c>silkwright gauge chart</c>.</summary>
internal static class GaugeChartVerb
{
    public static Verb Create(Surroundings surroundings)
    {
        var verb = new Verb("chart", "Whether the coat has got thicker or thinner, since when, and with which trough, person or emulsion.")
        {
            Examples =
            [
                ("silkwright gauge chart demo/gauge-history.csv", "a shop that bought a trough"),
                ("silkwright gauge chart demo/gauge-history.csv --json", "every point with its limits, for a program"),
            ],
            GoodToKnow = "Readings of one screen, day and hand count as one coat. Put operator, trough and day with every reading: a change can only be put down to what was told.",
        };
        var file = new Argument<string?>("FILE.csv") { Description = "readings of a gauge with their day; left out with --data", Arity = ArgumentArity.ZeroOrOne };
        var data = new Option<string?>("--data") { Description = "the folder a shop keeps its records in: the readings kept there", HelpName = "FOLDER" };
        var (unit, bare, json) = (GaugeCommand.UnitOption(), GaugeCommand.BareOption(), Answer.JsonOption());
        verb.Add(file);
        verb.Add(data);
        verb.Add(unit);
        verb.Add(bare);
        verb.Add(json);
        verb.SetAction(async (parse, cancel) =>
        {
            var bareUm = GaugeCommand.Bare(parse.GetValue(bare));
            var entries = (parse.GetValue(file), parse.GetValue(data)) switch
            {
                ({ } path, null) => (await GaugeCommand.ReadAsync(path, parse.GetValue(unit), bareUm, cancel)).Entries,
                (null, { } folder) => await (await RecordsFolder.OpenAsync(folder, surroundings, cancel)).Gauging.EntriesAsync(cancel: cancel),
                _ => throw new InputProblemException(new Problem("There must be a file or a data folder, and not both.", "command line", "Write FILE.csv, or --data FOLDER for the readings kept there.")),
            };
            var history = CoatHistory.Of(ScreenMeans.Of(entries, bareUm));
            if (parse.GetValue(json))
                Answer.WriteJson(GaugeChartDocument.Of(history), surroundings);
            else
                GaugeChartTable.Print(history, Answer.Console(surroundings));
            return ExitCode.Done;
        });
        return verb;
    }
}
