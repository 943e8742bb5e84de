using Microsoft.EntityFrameworkCore;

namespace Silkwright.Records.Catalogues;

internal static class CatalogueTables
{
    public static void Shape(ModelBuilder model)
    {
        _ = model.Entity<CatalogueRevision>().HasKey(r => r.Revision);
        _ = model.Entity<CatalogueRevision>().Property(r => r.Revision).ValueGeneratedNever();
    }
}
