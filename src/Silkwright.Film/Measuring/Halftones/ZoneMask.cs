
namespace Silkwright.Film.Measuring.Halftones;

/// <summary>Draws a zone with one period around it.</summary>
internal static class ZoneMask
{
    /// <summary>A cell reaches 0.71 periods from its site at its corners; one period more is around it.</summary>
    private const double EdgeReach = 1.71;

    /// <summary>A cell reaches this far from its site along rows and columns, whatever the angle: half its diagonal. What more it takes of its neighbours they cover themselves.</summary>
    private const double InnerReach = 0.71;

    /// <summary>Sites, in the order of their rows, after which the mask is made small again.</summary>
    private const int SitesTogether = 16_384;

    public static void Draw(SiteMap map, IReadOnlyList<int> sites, FilmBitmap mask)
    {
        foreach (var together in sites.Order().Chunk(SitesTogether))
        {
            foreach (var site in together)
            {
                var (x, y) = map.At(site);
                if (IsInner(map, site))
                    Square(mask, x, y, map.Lattice.Period * InnerReach);
                else
                    Disc(mask, x, y, map.Lattice.Period * EdgeReach);
            }

            mask.Compact();
        }
    }

    /// <summary>Whether all eight neighbours are in the same zone.</summary>
    public static bool IsInner(SiteMap map, int site)
    {
        for (var dj = -1; dj <= 1; dj++)
        {
            for (var di = -1; di <= 1; di++)
            {
                if (map.Zone[site + (dj * map.Across) + di] != map.Zone[site])
                    return false;
            }
        }

        return true;
    }

    private static void Square(FilmBitmap mask, double x, double y, double reach) => mask.Set(
        (int)Math.Max(0, x - reach),
        (int)Math.Min(mask.Width, x + reach + 1),
        (int)Math.Max(0, y - reach),
        (int)Math.Min(mask.Height, y + reach + 1));

    public static void Disc(FilmBitmap mask, double x, double y, double radius)
    {
        for (var row = Math.Max(0, (int)(y - radius)); row <= Math.Min(mask.Height - 1, (int)(y + radius)); row++)
        {
            var square = (radius * radius) - ((row + 0.5 - y) * (row + 0.5 - y));
            if (square <= 0)
                continue;
            var half = Math.Sqrt(square);
            mask.Set(row, Math.Clamp((int)(x - half), 0, mask.Width), Math.Clamp((int)(x + half) + 1, 0, mask.Width));
        }
    }
}
