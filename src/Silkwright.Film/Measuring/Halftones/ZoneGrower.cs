using System.Runtime.CompilerServices;

namespace Silkwright.Film.Measuring.Halftones;

/// <summary>Grows zones over a lattice's sites: from seed dots to every neighbouring site that is screened.</summary>
internal static class ZoneGrower
{
    /// <summary>The sites of each zone that holds seeds; zones that do not touch are apart.</summary>
    public static IEnumerable<IReadOnlyList<int>> Grow(SiteMap map, int[] seeds, DotShape[] shapes, double shift)
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

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static List<int> From(SiteMap map, int start)
    {
        var sites = new List<int> { start };
        var zone = map.Zone;
        var number = ++map.Zones;
        zone[start] = number;
        for (var k = 0; k < sites.Count; k++)
        {
            for (var dj = -1; dj <= 1; dj++)
            {
                for (var di = -1; di <= 1; di++)
                {
                    var next = sites[k] + (dj * map.Across) + di;
                    if (next < 0 || next >= zone.Length || zone[next] != 0 || !map.IsScreened(next))
                        continue;
                    zone[next] = number;
                    sites.Add(next);
                }
            }
        }

        return sites;
    }
}
