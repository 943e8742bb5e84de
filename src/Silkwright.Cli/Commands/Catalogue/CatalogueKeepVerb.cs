using System.CommandLine;
using Silkwright.Catalogue;
using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Records.Catalogues;

namespace Silkwright.Cli.Commands.Catalogue;

/// <summary><c>silkwright catalogue keep</c>: a checked file becomes the kept catalogue, and what that changes is told.</summary>
internal static class CatalogueKeepVerb
{
    public static Command Create(Surroundings surroundings)
    {
        var verb = new Verb("keep", "Checks a catalogue and keeps it in a shop's records, in place of the one before; tells what that changes.")
        {
            Examples =
            [
                ("silkwright catalogue keep demo/catalogue.csv --data data --by \"Ines Tarrow\"", "plans for the shop kept there then know what the catalogue knows"),
                ("silkwright catalogue keep demo/catalogue.csv --data data --by \"Ines Tarrow\" --only-tell", "what it would change; nothing is kept"),
            ],
            GoodToKnow = "The file replaces the kept catalogue as a whole: an emulsion it leaves out is gone from now on. Earlier ones stay in the records.",
        };
        var file = new Argument<string>("FILE.csv") { Description = "columns emulsion,property,value,ground,source,date; separated by , or ;" };
        var data = RecordsFolder.Option();
        var by = new Option<string>("--by") { Description = "who keeps it, by name", HelpName = "NAME", Required = true };
        var onlyTell = new Option<bool>("--only-tell") { Description = "tell what would change, and keep nothing" };
        var json = Answer.JsonOption();
        verb.Add(file);
        verb.Add(data);
        verb.Add(by);
        verb.Add(onlyTell);
        verb.Add(json);
        verb.SetAction(async (parse, cancel) =>
        {
            var catalogue = await CatalogueCommand.ReadAsync(parse.GetRequiredValue(file), cancel);
            var records = (await RecordsFolder.OpenOrBeginAsync(parse.GetRequiredValue(data), surroundings, cancel)).Catalogues;
            var before = await records.CurrentAsync(cancel);
            var revision = parse.GetValue(onlyTell)
                ? null
                : await records.SaveAsync(catalogue, parse.GetRequiredValue(by), before?.Revision.Revision ?? 0, cancel);
            var difference = CatalogueDifference.Between(before?.Catalogue, catalogue);
            if (parse.GetValue(json))
            {
                var document = revision is null ? CatalogueDocument.Of(catalogue) : KeptCatalogueDocument.Of(new KeptCatalogue(revision, catalogue));
                document["changes"] = CatalogueChangesDocument.Of(difference, catalogue);
                Answer.WriteJson(document, surroundings);
            }
            else
            {
                var console = Answer.Console(surroundings);
                CatalogueChangesTable.Print(difference, catalogue, console);
                if (revision is not null)
                    CatalogueChangesTable.PrintKept(revision, surroundings.Time.LocalTimeZone, console);
            }

            return ExitCode.Done;
        });
        return verb;
    }
}
