using Silkwright.Catalogue;

namespace Silkwright.Records.Catalogues;

/// <summary>A catalogue out of the records.</summary>
/// <param name="Revision">Who kept it, and when.</param>
/// <param name="Catalogue">What it says.</param>
public sealed record KeptCatalogue(CatalogueRevision Revision, EmulsionCatalogue Catalogue);
