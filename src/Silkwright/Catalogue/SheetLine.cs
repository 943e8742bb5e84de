namespace Silkwright.Catalogue;

/// <summary>One property of an emulsion: the source that is used, and the others side by side.</summary>
/// <param name="Used">On the firmest ground; among equals the newest, and an undated one last.</param>
/// <param name="Others">In the same order.</param>
public sealed record SheetLine(CatalogueEntry Used, IReadOnlyList<OtherSource> Others)
{
    public CatalogueProperty Property => Used.Property;

    /// <summary>The circumstance told; none for properties without one.</summary>
    public double? At => Used.At;

    /// <summary>Some source cannot be right beside the one that is used.</summary>
    public bool Conflicts => Others.Any(other => other.Conflicts);

    /// <param name="sources">What is said of one property at one circumstance; at least one.</param>
    internal static SheetLine Of(IEnumerable<CatalogueEntry> sources)
    {
        CatalogueEntry[] ranked = [.. sources.OrderBy(entry => entry.Ground).ThenByDescending(entry => entry.Date ?? DateOnly.MinValue)];
        return new SheetLine(ranked[0], [.. ranked[1..].Select(entry => new OtherSource(entry, ranked[0].Conflicts(entry)))]);
    }
}
