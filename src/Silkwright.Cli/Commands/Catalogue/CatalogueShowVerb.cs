using System.CommandLine;
using Silkwright.Catalogue;
using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Records.Catalogues;

namespace Silkwright.Cli.Commands.Catalogue;

/// <summary><c>silkwright catalogue show</c>: the sheets of a file, or of the kept catalogue.</summary>
internal static class CatalogueShowVerb
{
    public static Command Create(Surroundings surroundings)
    {
        var verb = new Verb("show", "Each emulsion's sheet: the value used and its ground, other sources beside it, conflicts, and what to measure.")
        {
            Examples =
            [
                ("silkwright catalogue show demo/catalogue.csv", "invented emulsions, with sources that conflict and things nobody knows"),
                ("silkwright catalogue show demo/catalogue.csv \"Linnet 28\" --json", "one emulsion, for a program"),
                ("silkwright catalogue show --data data", "the catalogue that is kept in a data folder, by whom and when"),
                ("silkwright choose --ink discharge --run 400 --catalogue demo/catalogue.csv", "which of them for a job"),
            ],
            GoodToKnow = "The firmest ground is used, then the newest date. A conflict is not settled by that: somebody is wrong, or speaks of another lot.",
        };
        var file = new Argument<string?>("FILE.csv") { Description = "columns emulsion,property,value,ground,source,date; separated by , or ;. Left out with --data", Arity = ArgumentArity.ZeroOrOne };
        var emulsion = new Argument<string?>("EMULSION") { Description = "one emulsion; all when not given", Arity = ArgumentArity.ZeroOrOne };
        var data = new Option<string?>("--data") { Description = "the folder a shop keeps its records in: the kept catalogue is shown", HelpName = "FOLDER" };
        var json = Answer.JsonOption();
        verb.Add(file);
        verb.Add(emulsion);
        verb.Add(data);
        verb.Add(json);
        verb.SetAction(async (parse, cancel) =>
        {
            switch (parse.GetValue(file), parse.GetValue(emulsion), parse.GetValue(data))
            {
                case ({ } path, var named, null):
                    Show(Asked(await CatalogueCommand.ReadAsync(path, cancel), named), null, parse.GetValue(json), surroundings);
                    break;
                case (var named, null, { } folder):
                    var kept = await (await RecordsFolder.OpenAsync(folder, surroundings, cancel)).Catalogues.RequireAsync(cancel);
                    Show(Asked(kept.Catalogue, named), kept, parse.GetValue(json), surroundings);
                    break;
                default:
                    throw new InputProblemException(new Problem(
                        "There must be a file or a data folder, and not both.", "command line", "Write FILE.csv, or --data FOLDER for the kept catalogue, and an emulsion behind it if one is enough."));
            }

            return ExitCode.Done;
        });
        return verb;
    }

    private static void Show(IReadOnlyList<CatalogueSheet> sheets, KeptCatalogue? kept, bool json, Surroundings surroundings)
    {
        if (json)
        {
            Answer.WriteJson(kept is null ? CatalogueDocument.Of(sheets) : KeptCatalogueDocument.Of(kept, sheets), surroundings);
            return;
        }

        var console = Answer.Console(surroundings);
        if (kept is not null)
            CatalogueChangesTable.PrintKept(kept.Revision, surroundings.Time.LocalTimeZone, console);
        CatalogueTable.Print(sheets, console);
    }

    private static IReadOnlyList<CatalogueSheet> Asked(EmulsionCatalogue catalogue, string? emulsion)
    {
        if (emulsion is null)
            return catalogue.Sheets;
        return catalogue.Sheet(emulsion) is { } sheet
            ? [sheet]
            : throw new InputProblemException(new Problem(
                $"The catalogue has no emulsion called '{emulsion}'.", "EMULSION", $"Write one of {string.Join(", ", catalogue.Sheets.Take(20).Select(known => known.Emulsion))}."));
    }
}
