namespace Silkwright.Catalogue;

/// <summary>Emulsions as data, each value with its source.</summary>
public sealed class EmulsionCatalogue
{
    /// <param name="entries">What the sources say, in any order. Names that differ in case alone are one emulsion.</param>
    public EmulsionCatalogue(IEnumerable<CatalogueEntry> entries) => Sheets =
    [
        .. entries.GroupBy(entry => entry.Emulsion, StringComparer.OrdinalIgnoreCase).Select(told => CatalogueSheet.Of(told.First().Emulsion, [.. told])),
    ];

    /// <summary>A sheet an emulsion, in the order they were first named.</summary>
    public IReadOnlyList<CatalogueSheet> Sheets { get; }

    /// <summary>The sheet of an emulsion; none where the catalogue has no such name.</summary>
    public CatalogueSheet? Sheet(string emulsion) =>
        Sheets.FirstOrDefault(sheet => string.Equals(sheet.Emulsion, emulsion, StringComparison.OrdinalIgnoreCase));
}
