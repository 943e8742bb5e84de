
namespace Silkwright.Film.Measuring.Halftones;

/// <summary>Tones at the sites of a zone, smoothed by a plane through the sites about one.</summary>
/// <remarks>Kept as the areas of the dots or holes there: a tone is a dot's share of a lattice cell, or what a hole leaves of it.</remarks>
/// <param name="map">The lattice.</param>
/// <param name="ofHoles">The areas are of holes.</param>
internal sealed class ToneField(SiteMap map, bool ofHoles)
{
    /// <summary>A site that nothing is known of.</summary>
    private const int None = -1;

    /// <summary>Sites on either side that a plane is laid through.</summary>
    private const int Window = 2;
    private const int TailWindow = 3;
    private const int LeastNeighbours = 5;
    private const int LeastTailNeighbours = 16;

    /// <summary>Variance ratio that makes a slope plain: the 99.9 % point of F for 2 and 13 or more degrees of freedom (12.3, from memory).</summary>
    private const double LeastRatio = 12.5;

    /// <summary>Sites whose mean is the end of a tone range: one alone would be the pixel grid's luck.</summary>
    private const int EndSites = 8;
    private const double EndShare = 0.0005;

    private readonly double cell = map.Lattice.Period * map.Lattice.Period;
    private readonly SiteValues areas = new(map.Across * map.Down, None);
    private readonly AreaCounts counts = new();

    public bool Has(int site) => Tone(site) is { };

    /// <summary>Takes the area of the whole dot, or hole, of a site that has none yet. [px]</summary>
    public void Add(int site, int area)
    {
        areas[site] = area;
        counts.Add(area);
    }

    /// <summary>The ends of the tone range: the mean of the few lowest and of the few highest smoothed tones; none without enough sites.</summary>
    /// <param name="share">Share of the sites, lowest and highest, that are smoothed and compared.</param>
    /// <param name="least">Fewest sites of such a tail.</param>
    public (double Low, double High)? Ends(double share, int least)
    {
        var count = Math.Min(counts.Count, Math.Max(least, (int)(share * counts.Count)));
        if (count == 0)
            return null;
        var (smallest, largest) = (counts.At(count - 1), counts.At(counts.Count - count));
        var small = Tail(area => area <= smallest);
        var large = Tail(area => area >= largest);
        var (low, high) = (Smoothed((ofHoles ? large : small).Take(count)), Smoothed((ofHoles ? small : large).TakeLast(count)));
        if (low.Length == 0 || high.Length == 0)
            return null;
        var few = Math.Max(EndSites, (int)(EndShare * counts.Count));
        return (low.Take(few).Average(), high.TakeLast(few).Average());

        // In order of tones; of equal ones, of sites.
        IEnumerable<int> Tail(Predicate<int> isOf) => areas.Given().Where(a => isOf(a.Value)).OrderBy(a => ofHoles ? -a.Value : a.Value).ThenBy(a => a.Site).Select(a => a.Site);
    }

    private double[] Smoothed(IEnumerable<int> tail) => [.. tail.Select(site => Plane(site, TailWindow, LeastTailNeighbours)).OfType<double>().Order()];

    /// <summary>What the tones about a site let expect there.</summary>
    public double? Expected(int site) => Plane(site, Window, LeastNeighbours, withCentre: false);

    private double? Tone(int site) => site < 0 || site >= areas.Length || areas[site] is var area && area == None ? null : ofHoles ? 1 - (area / cell) : area / cell;

    /// <summary>Least-squares plane t = a + b di + c dj at the site itself, or the mean where no slope is plain (F test).</summary>
    private double? Plane(int site, int window, int least, bool withCentre = true)
    {
        double n = 0, si = 0, sj = 0, sii = 0, sjj = 0, sij = 0, st = 0, sit = 0, sjt = 0, stt = 0;
        for (var dj = -window; dj <= window; dj++)
        {
            for (var di = -window; di <= window; di++)
            {
                if ((di == 0 && dj == 0 && !withCentre) || Tone(site + (dj * map.Across) + di) is not { } t)
                    continue;
                n++;
                (si, sj, st) = (si + di, sj + dj, st + t);
                (sii, sjj, sij) = (sii + (di * di), sjj + (dj * dj), sij + (di * dj));
                (sit, sjt, stt) = (sit + (di * t), sjt + (dj * t), stt + (t * t));
            }
        }

        if (n < least)
            return null;
        var (a, b, c) = (sii - (si * si / n), sjj - (sj * sj / n), sij - (si * sj / n));
        var (d, e) = (sit - (si * st / n), sjt - (sj * st / n));
        var determinant = (a * b) - (c * c);
        if (determinant < 1e-6 * n)
            return st / n;
        var (slopeI, slopeJ) = (((d * b) - (e * c)) / determinant, ((e * a) - (d * c)) / determinant);
        var explained = (slopeI * d) + (slopeJ * e);
        var left = Math.Max(0, stt - (st * st / n) - explained);
        var sloped = n > 3 && explained / 2 > LeastRatio * left / (n - 3);
        return sloped ? (st - (slopeI * si) - (slopeJ * sj)) / n : st / n;
    }
}
