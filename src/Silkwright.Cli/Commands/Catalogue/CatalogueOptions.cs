using System.CommandLine;
using Silkwright.Catalogue;
using Silkwright.Estimates;
using Silkwright.Records.Store;

namespace Silkwright.Cli.Commands.Catalogue;

/// <summary>The catalogue that a question is asked with: a file's, or the kept one.</summary>
internal sealed class CatalogueOptions
{
    private readonly Option<string?> file = new("--catalogue") { Description = "a catalogue: it completes the shop's emulsions, and its others are weighed beside them, or in place of the usual kinds", HelpName = "FILE.csv" };
    private readonly Option<bool> kept = new("--kept-catalogue") { Description = "the same with the catalogue kept in the data folder" };

    /// <param name="verb">Takes the options.</param>
    public CatalogueOptions(Command verb)
    {
        verb.Add(file);
        verb.Add(kept);
    }

    /// <summary>The catalogue asked for; none: nobody asked.</summary>
    /// <param name="parse">The command line.</param>
    /// <param name="store">The data folder's records; none: no folder was named.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="InputProblemException">Both were asked for, the file has faults, or none is kept.</exception>
    public async Task<EmulsionCatalogue?> AskedAsync(ParseResult parse, SilkwrightStore? store, CancellationToken cancel) => (parse.GetValue(file), parse.GetValue(kept)) switch
    {
        (null, false) => null,
        ({ } path, false) => await CatalogueCommand.ReadAsync(path, cancel),
        (null, true) when store is not null => (await store.Catalogues.RequireAsync(cancel)).Catalogue,
        (null, true) => throw new InputProblemException(new Problem("The kept catalogue is kept in a data folder, and none is named.", "--kept-catalogue", "Name it with --data FOLDER, or a file with --catalogue FILE.csv.")),
        _ => throw new InputProblemException(new Problem("Two catalogues are asked for.", "--catalogue, --kept-catalogue", "Keep one of the two.")),
    };
}
