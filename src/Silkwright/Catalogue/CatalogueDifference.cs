namespace Silkwright.Catalogue;

/// <summary>What one catalogue changes against an earlier one.</summary>
public sealed record CatalogueDifference
{
    /// <summary>Emulsions the earlier one did not have, as the later one names them.</summary>
    public required IReadOnlyList<string> New { get; init; }

    /// <summary>Emulsions the later one has no more.</summary>
    public required IReadOnlyList<string> Gone { get; init; }

    /// <summary>What is told differently of the emulsions both have, in the later one's order.</summary>
    public required IReadOnlyList<LineChange> Changed { get; init; }

    /// <summary>Both say the same of the same emulsions.</summary>
    public bool IsNone => New.Count + Gone.Count + Changed.Count == 0;

    /// <param name="before">The earlier one; none: everything is new.</param>
    /// <param name="after">The later one.</param>
    public static CatalogueDifference Between(EmulsionCatalogue? before, EmulsionCatalogue after) => new()
    {
        New = [.. after.Sheets.Where(sheet => before?.Sheet(sheet.Emulsion) is null).Select(sheet => sheet.Emulsion)],
        Gone = [.. (before?.Sheets ?? []).Where(sheet => after.Sheet(sheet.Emulsion) is null).Select(sheet => sheet.Emulsion)],
        Changed = [.. after.Sheets.SelectMany(sheet => before?.Sheet(sheet.Emulsion) is { } earlier ? Changes(earlier, sheet) : [])],
    };

    private static IEnumerable<LineChange> Changes(CatalogueSheet before, CatalogueSheet after) =>
        before.Lines.Concat(after.Lines)
            .Select(line => (line.Property, line.At))
            .Distinct()
            .Select(told => new LineChange(after.Emulsion, LineOf(before, told), LineOf(after, told)))
            .Where(change => !SaysTheSame(change.Before, change.After));

    private static SheetLine? LineOf(CatalogueSheet sheet, (CatalogueProperty Property, double? At) told) =>
        sheet.Lines.FirstOrDefault(line => line.Property == told.Property && line.At == told.At);

    private static bool SaysTheSame(SheetLine? one, SheetLine? other)
    {
        return one is not null && other is not null && one.Others.Count == other.Others.Count
            && Sources(one).All(source => Sources(other).Any(source.SaysTheSameAs));

        static IEnumerable<CatalogueEntry> Sources(SheetLine line) => line.Others.Select(beside => beside.Entry).Prepend(line.Used);
    }
}
