using System.CommandLine;
using Silkwright.Catalogue;
using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Estimates;

namespace Silkwright.Cli.Commands.Catalogue;

/// <summary><c>silkwright catalogue</c>: emulsions as data, each value with its source.</summary>
internal static class CatalogueCommand
{
    public static Command Create(Surroundings surroundings) => new("catalogue", "What is known of emulsions, from which source, where sources conflict, and what nobody knows.")
    {
        Template(surroundings),
        Show(surroundings),
    };

    /// <summary>The catalogue in a file that a person named.</summary>
    /// <exception cref="InputProblemException">The file's faults.</exception>
    public static async Task<EmulsionCatalogue> ReadAsync(string path, CancellationToken cancel) =>
        CatalogueReader.Read(await InputFile.ReadTextAsync(path, "a catalogue", cancel), Path.GetFileName(path));

    private static Verb Template(Surroundings surroundings)
    {
        var verb = new Verb("template", "A catalogue to fill in: every property once, with what it means and takes.")
        {
            Examples = [("silkwright catalogue template > catalogue.csv", "then open it in a spreadsheet, and repeat its lines for each emulsion and source")],
            GoodToKnow = "Leave a value empty where nobody knows it: it becomes a question to measure. Grounds are measuredHere, measuredElsewhere, datasheet and commonPractice.",
        };
        verb.SetAction(_ => surroundings.Output.Write(CatalogueTemplate.Text));
        return verb;
    }

    private static Verb Show(Surroundings surroundings)
    {
        var verb = new Verb("show", "Each emulsion's sheet: the value used and its ground, other sources beside it, conflicts, and what to measure.")
        {
            Examples =
            [
                ("silkwright catalogue show demo/catalogue.csv", "invented emulsions, with sources that conflict and things nobody knows"),
                ("silkwright catalogue show demo/catalogue.csv \"Linnet 28\" --json", "one emulsion, for a program"),
                ("silkwright choose --ink discharge --run 400 --catalogue demo/catalogue.csv", "which of them for a job"),
            ],
            GoodToKnow = "The firmest ground is used, then the newest date. A conflict is not settled by that: somebody is wrong, or speaks of another lot.",
        };
        var file = new Argument<string>("FILE.csv") { Description = "columns emulsion,property,value,ground,source,date; separated by , or ;" };
        var emulsion = new Argument<string?>("EMULSION") { Description = "one emulsion; all when not given", Arity = ArgumentArity.ZeroOrOne };
        var json = Answer.JsonOption();
        verb.Add(file);
        verb.Add(emulsion);
        verb.Add(json);
        verb.SetAction(async (parse, cancel) =>
        {
            var sheets = Asked(await ReadAsync(parse.GetRequiredValue(file), cancel), parse.GetValue(emulsion));
            if (parse.GetValue(json))
                Answer.WriteJson(CatalogueDocument.Of(sheets), surroundings);
            else
                CatalogueTable.Print(sheets, Answer.Console(surroundings));
            return ExitCode.Done;
        });
        return verb;
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
