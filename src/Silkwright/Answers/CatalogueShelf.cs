using Silkwright.Catalogue;
using Silkwright.Estimates;
using Silkwright.Plans;

namespace Silkwright.Answers;

/// <summary>A catalogue's emulsions put beside what a shop has.</summary>
public static class CatalogueShelf
{
    /// <summary>The shop with the catalogue's emulsions after its own, and what was left out and why.</summary>
    /// <remarks>An emulsion that the shop itself describes stands as the shop has it: that lot is the one in its hand.</remarks>
    /// <exception cref="InputProblemException">The catalogue has no emulsion that can be reckoned with, and the shop none.</exception>
    public static (Shop Shop, IReadOnlyList<Note> Notes) Add(Shop shop, EmulsionCatalogue catalogue)
    {
        var own = shop.Emulsions.Select(emulsion => emulsion.Id).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var notes = new List<Note>();
        var emulsions = shop.Emulsions.ToList();
        foreach (var sheet in catalogue.Sheets)
        {
            if (own.Contains(sheet.Emulsion))
                notes.Add(new Note($"{sheet.Emulsion} is on the shop's own shelf: what the shop says of it stands before the catalogue."));
            else if (CatalogueEmulsion.Of(sheet) is { } emulsion)
                emulsions.Add(emulsion);
            else
                notes.Add(new Note($"{sheet.Emulsion} is left out: the catalogue does not tell its family."));
        }

        return emulsions.Count > 0
            ? (shop with { Emulsions = emulsions }, notes)
            : throw new InputProblemException(new Problem("No emulsion of the catalogue has a family.", "catalogue", "Tell each one's family: a line `NAME,family,photopolymer,datasheet,…`."));
    }
}
