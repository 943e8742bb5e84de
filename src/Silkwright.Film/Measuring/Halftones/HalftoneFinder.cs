using Silkwright.Artwork;

namespace Silkwright.Film.Measuring.Halftones;

/// <summary>Finds a film's halftones and measures each: docs/engines/film.md, "Halftones".</summary>
internal static class HalftoneFinder
{
    /// <summary>Most zones that are told.</summary>
    public const int MostZones = 200;

    private const int MostLattices = 48;

    /// <summary>The zones, and a mask of them with one period around; no mask where there is none.</summary>
    public static (IReadOnlyList<HalftoneZone> Zones, FilmBitmap? Mask) Find(
        FilmBitmap bits, ComponentSet image, ComponentSet gap, double dpi, CancellationToken cancel) =>
        Find(bits, image, gap, dpi, Swath.Of(bits.Height, image.Dots.Length + gap.Dots.Length, dpi), cancel);

    /// <summary>The same where lattices are looked for swath by swath. A zone grows over the whole film from any of them.</summary>
    public static (IReadOnlyList<HalftoneZone> Zones, FilmBitmap? Mask) Find(
        FilmBitmap bits, ComponentSet image, ComponentSet gap, double dpi, IReadOnlyList<Swath> swaths, CancellationToken cancel)
    {
        var dots = new ScreenDots(image.Dots, dpi);
        var holes = new ScreenDots(gap.Dots, dpi);
        IReadOnlyList<DotGroup> dotGroups = [], holeGroups = [];
        Parallel.Invoke(
            new ParallelOptions { CancellationToken = cancel },
            () => dotGroups = Groups(dots),
            () => holeGroups = Groups(holes));
        var seeds = dotGroups.Select(g => (Group: g, Lattice: g.Lattice, Holes: false))
            .Concat(holeGroups.Select(g => (Group: g, Lattice: ToDots(g.Lattice), Holes: true)))
            .OrderByDescending(s => s.Group.Members.Length).Take(MostLattices);
        var groupedDots = new GroupedDots(dots, Largest(dotGroups));
        var groupedHoles = new GroupedDots(holes, Largest(holeGroups));
        var taken = new TakenDots(dots.Count, holes.Count);
        var maps = new List<SiteMap>();
        var grown = new List<(SiteMap Map, IReadOnlyList<int> Sites)>();
        foreach (var (group, lattice, isHoles) in seeds)
        {
            cancel.ThrowIfCancellationRequested();
            var seed = Array.Exists(group.Members, m => taken.Has(m, isHoles)) ? Array.FindAll(group.Members, m => !taken.Has(m, isHoles)) : group.Members;
            if (seed.Length < LatticeGroups.LeastDots || seed.Length < group.Members.Length / 2 || grown.Count >= MostZones)
                continue;
            var (shapes, shift) = isHoles ? (holes, 0.5) : (dots, 0.0);
            var map = maps.Find(m => m.Fits(shapes, seed, shift));
            if (map is null)
                maps.Add(map = new SiteMap(bits, lattice, dots, holes, groupedDots, groupedHoles));
            foreach (var sites in ZoneGrower.Grow(map, seed, shapes, shift))
            {
                taken.Take(map, sites);
                grown.Add((map, sites));
            }
        }

        var measured = new (SiteMap Map, IReadOnlyList<int> Sites, HalftoneZone? Zone)[grown.Count];
        _ = Parallel.For(0, grown.Count, new ParallelOptions { CancellationToken = cancel }, i =>
        {
            var (map, sites) = grown[i];
            measured[i] = (map, sites, new ZoneMeasurer(map, sites, dots, holes, dpi).Measure());
        });
        var zones = measured.Where(z => z.Zone is not null).ToArray();
        if (zones.Length == 0)
            return ([], null);
        var mask = new FilmBitmap(bits.Width, bits.Height);
        foreach (var (map, sites, _) in zones)
            ZoneMask.Draw(map, sites, mask);
        var apart = maps.ToDictionary(m => m, m => StrandedDots.Hide(m, dots, mask));
        var told = zones.Select(z => z.Zone! with { CutDots = z.Zone.CutDots + apart[z.Map].GetValueOrDefault(z.Map.Zone[z.Sites[0]]) });
        return ([.. told.OrderByDescending(z => z.WidthMm * z.HeightMm)], mask);

        IReadOnlyList<DotGroup> Groups(ScreenDots shapes)
        {
            var groups = swaths.SelectMany(swath => LatticeGroups.Find(shapes.In(swath), bits.Width, dpi, cancel)).ToArray();
            return swaths.Count == 1 ? groups : JoinedGroups.Of(groups, shapes);
        }
    }

    private static IReadOnlyList<DotGroup> Largest(IReadOnlyList<DotGroup> groups) => [.. groups.OrderByDescending(g => g.Members.Length).Take(MostLattices)];

    /// <summary>The lattice of dots whose holes stand on this one: half a step away each way.</summary>
    private static ScreenLattice ToDots(ScreenLattice holes)
    {
        var (x, y) = holes.At(-0.5, -0.5);
        return holes with { OriginX = x, OriginY = y };
    }

    /// <summary>Dots and holes that belong to a zone already.</summary>
    private sealed class TakenDots(int dots, int holes)
    {
        private readonly bool[] dotTaken = new bool[dots];
        private readonly bool[] holeTaken = new bool[holes];

        public bool Has(int member, bool isHole) => isHole ? holeTaken[member] : dotTaken[member];

        public void Take(SiteMap map, IReadOnlyList<int> sites)
        {
            foreach (var site in sites)
            {
                if (map.Dot(site) >= 0)
                    dotTaken[map.Dot(site)] = true;
                for (var corner = 0; corner < 4; corner++)
                {
                    var hole = map.Hole(site - (corner & 1) - ((corner >> 1) * map.Across));
                    if (hole >= 0)
                        holeTaken[hole] = true;
                }
            }
        }
    }
}
