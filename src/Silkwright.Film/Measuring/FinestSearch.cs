using Silkwright.Artwork;
using Silkwright.Film.Readers;

namespace Silkwright.Film.Measuring;

/// <summary>Finds the narrowest part of image or gap: docs/engines/film.md, "Finer than w".</summary>
/// <remarks>
/// Every diameter from 2 upwards is tested. To save work, a larger screening disc is opened first where that is proved to lose nothing:
/// if the screening disc W is itself open by the disc v, opening by W removes all that opening by v removes, so a piece for v lies in a
/// piece for W, which is then at least as large, at least as long and whole if the other is. Where no piece for W can qualify, none for v can.
/// </remarks>
internal sealed class FinestSearch
{
    /// <summary>Places are collected up to this width when the finest is below it. [µm]</summary>
    public const double PlacesUpToUm = 500;

    private const int MostPlaces = FinestFeature.MostPlaces;

    private const double LeastDiagonalMm = 0.25;
    private const double LeastAreaShare = 0.5;
    private const double SamePlaceMm = 1;

    /// <summary>Screening discs: each is open by all but a few of the discs below it.</summary>
    private static readonly int[] Screens = [9, 19, 28, 39, 56, 80, 113, 160, 226];

    /// <summary>Answers of <see cref="Screen"/> so far; they are the same for every film.</summary>
    private static readonly int[] ScreenOf = new int[DigitalDisc.MostDiameter + 1];

    private readonly PackedBitmap bits;
    private readonly bool gap;
    private readonly SparseBitmap? mask;
    private readonly TileMap? open;
    private readonly double umPerPx;
    private readonly SparseBitmap residue;
    private readonly OpeningTiles tiles;
    private readonly CancellationToken cancel;
    private readonly Dictionary<int, TileMap?> screened = [];

    public FinestSearch(PackedBitmap bits, FilmCells cells, bool gap, SparseBitmap? mask, double dpi, CancellationToken cancel)
    {
        (this.bits, this.gap, this.mask, this.cancel) = (bits, gap, mask, cancel);
        umPerPx = 25400 / dpi;
        open = mask is null ? null : TileMap.NotHidden(bits, mask);
        residue = new SparseBitmap(bits);
        tiles = new OpeningTiles(bits, cells, gap, cancel);
    }

    /// <summary>The narrowest part; none where nothing is narrower than <see cref="FilmLimits.WidestPartUm"/>.</summary>
    public FinestFeature? Find()
    {
        var most = Math.Min(FilmLimits.WidestPartPx, (int)(FilmLimits.WidestPartUm / umPerPx)) + 1;
        var places = new List<FilmPlace>();
        for (var w = 2; w <= most; w++)
        {
            cancel.ThrowIfCancellationRequested();
            var pieces = Pieces(w);
            Collect(pieces, w, places);
            if (places.Count > 0)
                most = places.Count >= MostPlaces ? w : Math.Min(most, Math.Max(w, (int)(PlacesUpToUm / umPerPx) + 1));
        }

        return places.Count == 0 ? null : new FinestFeature(places[0].WidthUm, places);
    }

    /// <summary>The pieces that make the film finer than <paramref name="w"/>.</summary>
    private List<Blob> Pieces(int w)
    {
        var screen = Screen(w);
        TileMap? where = null;

        // What counts for a screening disc itself is among what it was found to remove when it screened smaller ones.
        if ((screen != w || screened.ContainsKey(w)) && !Screened(screen, out where))
            return [];
        return Qualifying(w, w, where);
    }

    /// <summary>Where pieces may be, by a screening disc; false if nowhere.</summary>
    private bool Screened(int screen, out TileMap? where)
    {
        if (!screened.TryGetValue(screen, out where))
        {
            var least = Enumerable.Range(2, screen - 1).First(v => Screen(v) == screen);
            var pieces = Qualifying(screen, least, null);
            where = pieces.Count == 0 ? null : ResiduePieces.Tiles(bits, residue, pieces);
            screened[screen] = where;
        }

        return where is not null;
    }

    /// <summary>Pieces removed by a disc that would count for diameter <paramref name="judgedAs"/>.</summary>
    private List<Blob> Qualifying(int diameter, int judgedAs, TileMap? only)
    {
        tiles.Fill(diameter, only ?? open, mask, residue);
        var leastArea = LeastAreaShare * judgedAs * judgedAs;
        var leastDiagonal = Math.Max(2.0 * judgedAs, LeastDiagonalMm * 1000 / umPerPx);
        var found = new List<Blob>();
        ResiduePieces.Find(
            bits,
            gap,
            residue,
            piece =>
            {
                if (piece.Area >= leastArea && (!piece.Marked || Math.Sqrt(Square(piece.Width) + Square(piece.Height)) >= leastDiagonal))
                    found.Add(piece);
            },
            cancel);
        return found;
    }

    private void Collect(List<Blob> pieces, int w, List<FilmPlace> places)
    {
        foreach (var piece in pieces.OrderByDescending(p => p.Area).Take(4 * MostPlaces))
        {
            if (places.Count >= MostPlaces)
                return;
            var (x, y) = ResiduePieces.Place(residue, piece);
            var place = new FilmPlace((x + 0.5) * umPerPx / 1000, (y + 0.5) * umPerPx / 1000, (w - 1) * umPerPx);
            if (!places.Exists(p => Square(p.XMm - place.XMm) + Square(p.YMm - place.YMm) < SamePlaceMm * SamePlaceMm))
                places.Add(place);
        }
    }

    /// <summary>The first screening disc that is open by the disc of a diameter, or that disc itself.</summary>
    private static int Screen(int diameter)
    {
        if (ScreenOf[diameter] == 0)
        {
            var disc = new DigitalDisc(diameter);
            ScreenOf[diameter] = Screens.Where(s => s >= diameter).FirstOrDefault(s => new DigitalDisc(s).IsOpenBy(disc), diameter);
        }

        return ScreenOf[diameter];
    }

    private static double Square(double value) => value * value;
}
