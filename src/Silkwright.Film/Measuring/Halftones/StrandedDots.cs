namespace Silkwright.Film.Measuring.Halftones;

/// <summary>Slivers of cut dots that stand apart from their zone, behind artwork laid across it or at its edge.</summary>
internal static class StrandedDots
{
    /// <summary>Hides the slivers that belong to a map's zones.</summary>
    /// <param name="map">A lattice whose zones are grown.</param>
    /// <param name="dots">Of the image; those that are not round enough for dots may be slivers.</param>
    /// <param name="mask">What is hidden from the search for line work.</param>
    /// <returns>Slivers of each zone, by its number, that stand at none of its sites or their neighbours.</returns>
    public static Dictionary<int, int> Hide(SiteMap map, ScreenDots dots, FilmBitmap mask)
    {
        var apart = new Dictionary<int, int>();
        for (var i = 0; i < dots.Count; i++)
        {
            if (!dots.MayBePart(i))
                continue;
            var part = dots[i];
            var site = map.Nearest(part.X, part.Y);
            var (zone, steps) = map.NearestZone(site, part.Area);
            if (zone == 0)
                continue;
            var reach = (Math.Sqrt((part.Width * part.Width) + (part.Height * part.Height)) / 2) + 1;
            ZoneMask.Disc(mask, part.X, part.Y, reach);
            if (steps > 1)
                apart[zone] = apart.GetValueOrDefault(zone) + 1;
        }

        return apart;
    }
}
