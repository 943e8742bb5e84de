using Silkwright.Catalogue;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Plans;

namespace Silkwright.Answers;

/// <summary>What a catalogue knows, put to what a shop has. docs/engines/catalogue.md, "What it feeds".</summary>
public static class CatalogueShelf
{
    /// <summary>The shop with what it leaves open of its own emulsions told by the catalogue, and notes on what was taken.</summary>
    /// <remarks>Whatever the shop itself says of an emulsion stands: that lot is the one in its hand.</remarks>
    public static (Shop Shop, IReadOnlyList<Note> Notes) Complete(Shop shop, EmulsionCatalogue catalogue)
    {
        var notes = new List<Note>();
        return (shop with { Emulsions = [.. shop.Emulsions.Select(Completed)] }, [.. notes.Distinct()]);

        StencilEmulsion Completed(StencilEmulsion own)
        {
            if (own.LaidWith is { } laying)
                own = own with { LaidWith = Completed(laying) };
            if (catalogue.Sheet(own.Id) is not { } sheet)
                return own;
            if (sheet.Family is { } family && family != own.Family)
                notes.Add(new Note($"{own.Id} is of another family in the catalogue than on the shop's shelf: nothing is taken from the catalogue until one of the two is put right."));
            var (completed, taken) = CatalogueEmulsion.Complete(own, sheet);
            notes.AddRange(taken.GroupBy(line => (Who: CatalogueWords.Who(line.Used), line.Used.Ground)).Select(source => new Note(
                $"{own.Id}: {Listed(source.Select(Said))}, from the catalogue ({source.Key.Who}); the shop itself does not say.", source.Key.Ground)));
            return completed;
        }
    }

    /// <summary>The shop completed, with the catalogue's other emulsions after its own, and notes on what was taken, added and left out.</summary>
    /// <exception cref="InputProblemException">The catalogue has no emulsion that can be reckoned with, and the shop none.</exception>
    public static (Shop Shop, IReadOnlyList<Note> Notes) Add(Shop shop, EmulsionCatalogue catalogue)
    {
        var (completed, taken) = Complete(shop, catalogue);
        var own = shop.Emulsions.Select(emulsion => emulsion.Id).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var others = catalogue.Sheets.Where(sheet => !own.Contains(sheet.Emulsion)).Select(sheet => (sheet.Emulsion, Known: CatalogueEmulsion.Of(sheet))).ToArray();
        StencilEmulsion[] added = [.. others.Select(other => other.Known).OfType<StencilEmulsion>()];
        if (own.Count + added.Length == 0)
            throw new InputProblemException(new Problem("No emulsion of the catalogue has a family.", "catalogue", "Tell each one's family: a line `NAME,family,photopolymer,datasheet,…`."));
        var notes = taken.ToList();
        if (own.Count > 0 && added.Length > 0)
            notes.Add(new Note($"Weighed out of the catalogue beside the shop's own, which has none of them on its shelf: {Listed(added.Select(emulsion => emulsion.Id))}."));
        notes.AddRange(others.Where(other => other.Known is null).Select(other => new Note($"{other.Emulsion} is left out: the catalogue does not tell its family.")));
        return (completed with { Emulsions = [.. completed.Emulsions, .. added] }, notes);
    }

    private static string Said(SheetLine line) => $"{CatalogueWords.Of(line)}{(line.Property.Words is null && line.At is null ? "" : ":")} {CatalogueWords.Value(line.Used)}";

    private static string Listed(IEnumerable<string> parts) => string.Join(", ", parts);
}
