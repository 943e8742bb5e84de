namespace Silkwright.Film.Measuring.Halftones;

/// <summary>A lattice laid over the whole film: which dot stands at each site, which hole between four of them.</summary>
internal sealed class SiteMap
{
    /// <summary>How far off its site a dot may stand. [period]</summary>
    private const double Reach = 0.3;

    /// <summary>Mean offset and spread about the sites of shapes that share a lattice. [period]</summary>
    private const double FitOffset = 0.02;
    private const double FitSpread = 0.1;

    /// <summary>Steps from a zone to what still belongs to it: two sites missing between.</summary>
    public const int ZoneReach = 3;

    /// <summary>How much larger a dot may be than one a few periods off. Tones run slowly: from 3 to 6 % in two periods is already steep.</summary>
    private const double MostGrowth = 2;

    private readonly FilmBitmap bits;
    private readonly ScreenDots dotShapes;
    private readonly ScreenDots holeShapes;
    private readonly int firstI;
    private readonly int firstJ;
    private readonly SiteValues dots;
    private readonly SiteValues holes;

    /// <param name="bits">The film.</param>
    /// <param name="lattice">Laid over it.</param>
    /// <param name="dotShapes">Pieces of the image.</param>
    /// <param name="holeShapes">Of the gap.</param>
    /// <param name="dotGroups">Those that stand on lattices; they may be others than this one.</param>
    /// <param name="holeGroups">The same of holes.</param>
    public SiteMap(FilmBitmap bits, ScreenLattice lattice, ScreenDots dotShapes, ScreenDots holeShapes, GroupedDots dotGroups, GroupedDots holeGroups)
    {
        (this.bits, this.dotShapes, this.holeShapes) = (bits, dotShapes, holeShapes);
        Lattice = lattice;
        (double I, double J)[] corners =
            [lattice.Sites(0, 0), lattice.Sites(bits.Width, 0), lattice.Sites(0, bits.Height), lattice.Sites(bits.Width, bits.Height)];
        firstI = (int)Math.Floor(corners.Min(c => c.I)) - 1;
        firstJ = (int)Math.Floor(corners.Min(c => c.J)) - 1;
        Across = (int)Math.Ceiling(corners.Max(c => c.I)) + 2 - firstI;
        Down = (int)Math.Ceiling(corners.Max(c => c.J)) + 2 - firstJ;
        dots = Place(dotShapes, dotGroups, 0);
        holes = Place(holeShapes, holeGroups, 0.5);
        Zone = new SiteValues(Across * Down, 0);
    }

    public ScreenLattice Lattice { get; }

    public int Across { get; }

    public int Down { get; }

    /// <summary>Number of the zone each site belongs to, from 1; 0 for none.</summary>
    public SiteValues Zone { get; }

    /// <summary>Zones given out so far.</summary>
    public int Zones { get; set; }

    /// <summary>Whether shapes stand on these sites so well that they belong to this lattice and need none of their own.</summary>
    public bool Fits(ScreenDots shapes, int[] members, double shift)
    {
        double sumI = 0, sumJ = 0, square = 0;
        foreach (var m in members)
        {
            var (di, dj) = Lattice.Off(shapes[m].X, shapes[m].Y, shift);
            (sumI, sumJ, square) = (sumI + di, sumJ + dj, square + (di * di) + (dj * dj));
        }

        var n = members.Length;
        return Math.Abs(sumI / n) < FitOffset && Math.Abs(sumJ / n) < FitOffset && Math.Sqrt(square / n) < FitSpread;
    }

    /// <summary>The dot at a site, or -1.</summary>
    public int Dot(int site) => dots[site];

    /// <summary>The hole half a step right and down of a site, or -1.</summary>
    public int Hole(int site) => holes[site];

    /// <summary>The site number of the place nearest to a point.</summary>
    public int Nearest(double x, double y, double shift = 0)
    {
        var (i, j) = Lattice.Sites(x, y);
        return ((int)Math.Round(j - shift - firstJ) * Across) + (int)Math.Round(i - shift - firstI);
    }

    /// <summary>Where a site is. [px]</summary>
    public (double X, double Y) At(int site, double shift = 0) =>
        Lattice.At((site % Across) + firstI + shift, (site / Across) + firstJ + shift);

    /// <summary>Whether the site is part of a halftone: a dot or a hole stands there, or its middle is image and the four places between are gap.</summary>
    public bool IsScreened(int site)
    {
        var (i, j) = (site % Across, site / Across);
        if (i < 1 || j < 1 || i >= Across - 1 || j >= Down - 1)
            return false;
        if (dots[site] >= 0 || holes[site] >= 0 || holes[site - 1] >= 0 || holes[site - Across] >= 0 || holes[site - Across - 1] >= 0)
            return true;
        return Pixel(At(site)) && !Pixel(At(site, 0.5)) && !Pixel(At(site - 1, 0.5)) && !Pixel(At(site - Across, 0.5))
            && !Pixel(At(site - Across - 1, 0.5));
    }

    /// <summary>The site some steps from another, or -1 beyond the lattice's edge, where no site is screened.</summary>
    public int Beside(int site, int di, int dj)
    {
        var (i, j) = ((site % Across) + di, (site / Across) + dj);
        return i < 1 || j < 1 || i >= Across - 1 || j >= Down - 1 ? -1 : (j * Across) + i;
    }

    /// <summary>
    /// The zone that a part of a dot near a site may come from, and how many steps off: one of its dots in reach is at least half as large.
    /// Zone 0 if there is none.
    /// </summary>
    public (int Zone, int Steps) NearestZone(int site, int area)
    {
        var (zone, steps) = (0, ZoneReach + 1);
        for (var dj = -ZoneReach; dj <= ZoneReach; dj++)
        {
            for (var di = -ZoneReach; di <= ZoneReach; di++)
            {
                var far = Math.Max(Math.Abs(di), Math.Abs(dj));
                if (far < steps && Beside(site, di, dj) is >= 0 and var near && Zone[near] != 0 && dots[near] >= 0
                    && area <= MostGrowth * dotShapes[dots[near]].Area)
                {
                    (zone, steps) = (Zone[near], far);
                }
            }
        }

        return (zone, steps);
    }

    /// <summary>Whether a site has a dot, or a hole, that is not much larger than the one of a zone's site near it.</summary>
    public bool IsLike(int site, int other) => IsLike(dots, dotShapes, site, other) || IsLike(holes, holeShapes, site, other);

    private static bool IsLike(SiteValues at, ScreenDots shapes, int site, int other) =>
        at[site] >= 0 && at[other] >= 0 && shapes[at[other]].Area <= MostGrowth * shapes[at[site]].Area;

    /// <summary>The image at a point; gap outside the film.</summary>
    public bool Pixel((double X, double Y) at)
    {
        var (x, y) = ((int)Math.Floor(at.X), (int)Math.Floor(at.Y));
        return x >= 0 && y >= 0 && x < bits.Width && y < bits.Height && bits[x, y];
    }

    /// <summary>Image pixels whose centres lie in a circle about a point.</summary>
    public int CountIn((double X, double Y) at, double radius)
    {
        var count = 0;
        for (var y = Math.Max(0, (int)(at.Y - radius)); y <= Math.Min(bits.Height - 1, (int)(at.Y + radius)); y++)
        {
            var half = (radius * radius) - ((y + 0.5 - at.Y) * (y + 0.5 - at.Y));
            if (half <= 0)
                continue;
            var from = Math.Clamp((int)Math.Ceiling(at.X - Math.Sqrt(half) - 0.5), 0, bits.Width);
            var to = Math.Clamp((int)Math.Floor(at.X + Math.Sqrt(half) - 0.5) + 1, 0, bits.Width);
            count += bits.Count(y, from, to);
        }

        return count;
    }

    private SiteValues Place(ScreenDots shapes, GroupedDots groups, double shift)
    {
        var placed = new SiteValues(Across * Down, -1);
        var elsewhere = groups.NotOn(Lattice, shift);
        for (var k = 0; k < shapes.Count; k++)
        {
            var shape = shapes[k];
            if (!shapes.MayBeDot(k) || shape.Diameter > 1.15 * Lattice.Period || elsewhere[groups.Of(k)])
                continue;
            var (di, dj) = Lattice.Off(shape.X, shape.Y, shift);
            if ((di * di) + (dj * dj) > Reach * Reach)
                continue;
            var site = Nearest(shape.X, shape.Y, shift);
            if (site >= 0 && site < placed.Length && (placed[site] < 0 || shapes[placed[site]].Area < shape.Area))
                placed[site] = k;
        }

        return placed;
    }
}
