
namespace Silkwright.Film.Measuring.Halftones;

/// <summary>Grows zones over a lattice's sites: from seed dots to every neighbouring site that is screened.</summary>
internal static class ZoneGrower
{
    /// <summary>The sites of each zone that holds seeds; zones that do not touch are apart.</summary>
    public static IEnumerable<IReadOnlyList<int>> Grow(SiteMap map, int[] seeds, ScreenDots shapes, double shift)
    {
        foreach (var seed in seeds)
        {
            var start = map.Nearest(shapes[seed].X, shapes[seed].Y, shift);
            if (start < 0 || start >= map.Zone.Length || map.Zone[start] != 0 || !map.IsScreened(start))
                continue;
            var sites = From(map, start);
            if (sites.Count >= LatticeGroups.LeastDots)
                yield return sites;
        }
    }

    /// <summary>
    /// Every screened neighbour belongs; from a zone's edge also a dot or hole of like size with no more than two periods between, so that
    /// artwork laid across a halftone does not split it or strand the dots behind.
    /// </summary>
    private static List<int> From(SiteMap map, int start)
    {
        var sites = new List<int> { start };
        var zone = map.Zone;
        var number = ++map.Zones;
        zone[start] = number;
        for (var k = 0; k < sites.Count; k++)
        {
            var site = sites[k];
            var atEdge = false;
            for (var dj = -1; dj <= 1; dj++)
            {
                for (var di = -1; di <= 1; di++)
                {
                    var next = site + (dj * map.Across) + di;
                    if (zone[next] == number)
                        continue;
                    if (zone[next] != 0 || !map.IsScreened(next))
                    {
                        atEdge = true;
                        continue;
                    }

                    zone[next] = number;
                    sites.Add(next);
                }
            }

            if (atEdge)
                Across(map, site, number, sites);
        }

        return sites;
    }

    private static void Across(SiteMap map, int site, int number, List<int> sites)
    {
        for (var dj = -SiteMap.ZoneReach; dj <= SiteMap.ZoneReach; dj++)
        {
            for (var di = -SiteMap.ZoneReach; di <= SiteMap.ZoneReach; di++)
            {
                var next = map.Beside(site, di, dj);
                if (next < 0 || map.Zone[next] != 0 || !map.IsLike(site, next))
                    continue;
                map.Zone[next] = number;
                sites.Add(next);
            }
        }
    }
}
