namespace Silkwright.Catalogue;

/// <summary>A source beside the one that is used.</summary>
/// <param name="Entry">What it says.</param>
/// <param name="Conflicts">It and the used one cannot both be right: <see cref="CatalogueEntry.Conflicts"/>.</param>
public sealed record OtherSource(CatalogueEntry Entry, bool Conflicts);
