using System.Runtime.CompilerServices;
using Silkwright.Artwork;

namespace Silkwright.Film.Measuring.Halftones;

/// <summary>Ruling, angle, tones, smallest dot and hole and cut dots of one zone.</summary>
internal sealed class ZoneMeasurer(SiteMap map, IReadOnlyList<int> sites, ScreenDots dots, ScreenDots holes, double dpi)
{
    /// <summary>Share of the least and of the most tones that are smoothed and compared.</summary>
    private const double TailShare = 0.01;

    /// <summary>Fewest dots of a tail.</summary>
    private const int LeastTail = 40;

    /// <summary>Tone above which round dots come so near each other that they cannot be told from cut ones. [1]</summary>
    private const double MostToneOfCut = 0.68;

    private readonly ToneField dotTones = new(map, ofHoles: false);
    private readonly ToneField holeTones = new(map, ofHoles: true);
    private readonly AreaCounts innerDots = new();
    private readonly AreaCounts innerHoles = new();

    /// <summary>Sites whose dots the lattice is fitted to, and complements of those whose holes.</summary>
    private readonly List<int> fitted = new(sites.Count);
    private long cutDots;

    /// <summary>The zone; none if it has no whole dots or holes enough to say anything.</summary>
    public HalftoneZone? Measure()
    {
        TakeInner();
        if (fitted.Count < LatticeGroups.LeastDots / 3)
            return null;
        var lattice = ScreenLattice.Fit(fitted.Select(Point));
        TakeEdge();
        (double Low, double High)?[] tones = [dotTones.Ends(TailShare, LeastTail), holeTones.Ends(TailShare, LeastTail)];
        if (tones is [null, null])
            return null;
        var (left, top, right, bottom) = Box();
        var mm = 25.4 / dpi;
        return new HalftoneZone
        {
            XMm = left * mm,
            YMm = top * mm,
            WidthMm = (right - left) * mm,
            HeightMm = (bottom - top) * mm,
            RulingLpi = dpi / lattice.Period,
            AngleDegrees = lattice.AngleDegrees,
            TonePercentMin = 100 * Math.Clamp(tones.Min(t => t?.Low ?? double.MaxValue), 0, 1),
            TonePercentMax = 100 * Math.Clamp(tones.Max(t => t?.High ?? double.MinValue), 0, 1),
            SmallestDotUm = FirstPercentile(innerDots) * mm * 1000,
            SmallestHoleUm = FirstPercentile(innerHoles) * mm * 1000,
            CutDots = cutDots,
        };
    }

    /// <summary>Diameter of the circle of the area that one in a hundred is below. [px]</summary>
    private static double? FirstPercentile(AreaCounts areas) =>
        areas.Count == 0 ? null : Math.Sqrt(4 * areas.At((int)(0.01 * (areas.Count - 1))) / Math.PI);

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private (double I, double J, double X, double Y) Point(int fitted)
    {
        var (site, shift, shape) = fitted >= 0 ? (fitted, 0.0, dots[map.Dot(fitted)]) : (~fitted, 0.5, holes[map.Hole(~fitted)]);
        return ((site % map.Across) + shift, (site / map.Across) + shift, shape.X, shape.Y);
    }

    private void TakeInner()
    {
        foreach (var site in sites)
        {
            if (!ZoneMask.IsInner(map, site))
                continue;
            if (map.Dot(site) >= 0)
            {
                var dot = dots[map.Dot(site)];
                innerDots.Add(dot.Area);
                dotTones.Add(site, dot.Area);
                fitted.Add(site);
            }

            // The hole right and down of the site is inner if the four sites about it are.
            if (map.Hole(site) >= 0 && IsInner(site + 1) && IsInner(site + map.Across) && IsInner(site + map.Across + 1))
            {
                var hole = holes[map.Hole(site)];
                innerHoles.Add(hole.Area);
                holeTones.Add(site, hole.Area);
                fitted.Add(~site);
            }
        }
    }

    private bool IsInner(int site) => map.Zone[site] != 0 && ZoneMask.IsInner(map, site);

    /// <summary>Edge sites: whole dots give their tone, the others are cut.</summary>
    private void TakeEdge()
    {
        var period = map.Lattice.Period;
        var edge = new HashSet<int>();
        foreach (var site in sites)
        {
            if (ZoneMask.IsInner(map, site))
                continue;
            for (var dj = -1; dj <= 1; dj++)
            {
                for (var di = -1; di <= 1; di++)
                    _ = edge.Add(site + (dj * map.Across) + di);
            }
        }

        var whole = new List<(int Site, int Area)>();
        foreach (var site in edge)
        {
            if (IsInner(site) || dotTones.Expected(site) is not { } expected || expected > MostToneOfCut)
                continue;
            var area = expected * period * period;
            var index = map.Dot(site);
            if (index >= 0 && map.Zone[site] != 0 && IsWhole(dots[index], map.At(site), area, period))
            {
                whole.Add((site, dots[index].Area));
                continue;
            }

            // What is there of the dot that should be; solid artwork all round has swallowed it and left nothing to cut.
            var there = map.CountIn(map.At(site), Math.Sqrt(area / Math.PI) + 0.5);
            if (there > FilmComponents.SpeckArea && !IsSolid(site))
                cutDots++;
        }

        foreach (var (site, area) in whole)
            dotTones.Add(site, area);
        TakeEdgeHoles(period * period);
    }

    private void TakeEdgeHoles(double cell)
    {
        var whole = new List<(int Site, int Area)>();
        foreach (var site in sites)
        {
            if (map.Hole(site) < 0 || holeTones.Has(site) || holeTones.Expected(site) is not { } expected)
                continue;
            var hole = holes[map.Hole(site)];
            if (IsWhole(hole, map.At(site, 0.5), (1 - expected) * cell, Math.Sqrt(cell)))
                whole.Add((site, hole.Area));
        }

        foreach (var (site, area) in whole)
            holeTones.Add(site, area);
    }

    private static bool IsWhole(DotShape dot, (double X, double Y) at, double area, double period)
    {
        var off = Math.Sqrt(((dot.X - at.X) * (dot.X - at.X)) + ((dot.Y - at.Y) * (dot.Y - at.Y)));
        return Math.Abs(dot.Area - area) <= Math.Max(3, 0.12 * area) && off <= (0.05 * period) + 0.35;
    }

    private bool IsSolid(int site) => map.Pixel(map.At(site, 0.5)) && map.Pixel(map.At(site - 1, 0.5))
        && map.Pixel(map.At(site - map.Across, 0.5)) && map.Pixel(map.At(site - map.Across - 1, 0.5));

    private (double Left, double Top, double Right, double Bottom) Box()
    {
        var (left, top, right, bottom) = (double.MaxValue, double.MaxValue, double.MinValue, double.MinValue);
        var half = map.Lattice.Period / 2;
        foreach (var site in sites)
        {
            var (x, y, w, h) = (map.At(site).X, map.At(site).Y, 2 * half, 2 * half);
            if (map.Dot(site) >= 0)
            {
                var dot = dots[map.Dot(site)];
                (x, y, w, h) = (dot.X, dot.Y, dot.Width, dot.Height);
            }

            (left, right) = (Math.Min(left, x - (w / 2)), Math.Max(right, x + (w / 2)));
            (top, bottom) = (Math.Min(top, y - (h / 2)), Math.Max(bottom, y + (h / 2)));
        }

        return (Math.Max(0, left), Math.Max(0, top), right, bottom);
    }
}
