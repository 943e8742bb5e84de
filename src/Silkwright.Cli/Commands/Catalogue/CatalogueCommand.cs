using System.CommandLine;
using Silkwright.Catalogue;
using Silkwright.Contracts;
using Silkwright.Estimates;

namespace Silkwright.Cli.Commands.Catalogue;

/// <summary><c>silkwright catalogue</c>: emulsions as data, each value with its source.</summary>
internal static class CatalogueCommand
{
    public static Command Create(Surroundings surroundings) => new("catalogue", "What is known of emulsions, from which source, where sources conflict, and what nobody knows.")
    {
        Template(surroundings),
        CatalogueKeepVerb.Create(surroundings),
        CatalogueShowVerb.Create(surroundings),
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
}
