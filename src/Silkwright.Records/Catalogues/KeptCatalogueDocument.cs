using System.Globalization;
using System.Text.Json.Nodes;
using Silkwright.Catalogue;
using Silkwright.Contracts;

namespace Silkwright.Records.Catalogues;

/// <summary>A kept catalogue as other programs read it: silkwright/catalogue/1 with who kept it and when.</summary>
public static class KeptCatalogueDocument
{
    public static JsonObject Of(KeptCatalogue kept) => Of(kept, kept.Catalogue.Sheets);

    /// <param name="kept">Out of the records.</param>
    /// <param name="sheets">Those of its sheets that are asked for.</param>
    public static JsonObject Of(KeptCatalogue kept, IEnumerable<CatalogueSheet> sheets)
    {
        var document = CatalogueDocument.Of(sheets);
        document["kept"] = new JsonObject
        {
            ["revision"] = kept.Revision.Revision,
            ["savedBy"] = kept.Revision.SavedBy,
            ["savedAt"] = kept.Revision.SavedAt.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture),
        };
        return document;
    }
}
