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

    /// <summary>No part is finer than a pixel. [px]</summary>
    private const int LeastDiameter = 2;

    private const double LeastDiagonalMm = 0.25;
    private const double LeastAreaShare = 0.5;
    private const double SamePlaceMm = 1;

    /// <summary>What the first look on the whole film takes of the time, about.</summary>
    private const double ShareOfFirst = 0.6;

    /// <summary>Screening discs, those asked first before the others.</summary>
    /// <remarks>
    /// 9, 18, 28, 38, 60, 70, 86, 113 and 183 are open by every disc up to 9, 13, 21, 26, 32, 42, 50, 57 and 77, the rest by all but a few up to 189. The smaller a screening disc, the less it removes
    /// and the fewer places it leaves to look at.
    /// </remarks>
    private static readonly int[] Screens = [9, 18, 28, 38, 60, 70, 86, 113, 183, 254, 301, 308, 285, 381];

    /// <summary>The one that is opened before the smaller ones that it is open by: they need only look where it removes something.</summary>
    private const int FirstScreen = 60;

    /// <summary>Answers of <see cref="Screen"/> so far; they are the same for every film.</summary>
    private static readonly int[] ScreenOf = new int[DigitalDisc.MostDiameter + 1];

    private readonly FilmBitmap bits;
    private readonly TileMap? open;
    private readonly double umPerPx;
    private readonly ResiduePieces residue;
    private readonly CancellationToken cancel;
    private readonly Dictionary<int, (TileMap Own, TileMap Any)> screened = [];

    public FinestSearch(FilmBitmap bits, FilmCells cells, bool gap, FilmBitmap? mask, double dpi, CancellationToken cancel)
    {
        (this.bits, this.cancel) = (bits, cancel);
        umPerPx = 25400 / dpi;
        open = mask is null ? null : TileMap.NotHidden(bits, mask);
        residue = new ResiduePieces(bits, new OpeningTiles(bits, cells, gap, cancel), mask, cancel);
    }

    /// <summary>The narrowest part; none where nothing is narrower than <see cref="FilmLimits.WidestPartUm"/>.</summary>
    /// <param name="progress">Told the share done; it may end well before 1.</param>
    public FinestFeature? Find(IProgress<double>? progress = null)
    {
        _ = Screened(FirstScreen, new WorkParts(progress, ShareOfFirst).Part(0));
        var most = Math.Min(FilmLimits.WidestPartPx, (int)(FilmLimits.WidestPartUm / umPerPx)) + 1;
        var places = new List<FilmPlace>();
        for (var w = LeastDiameter; w <= most; w++)
        {
            cancel.ThrowIfCancellationRequested();
            var pieces = Pieces(w);
            Collect(pieces, w, places);
            progress?.Report(ShareOfFirst + ((1 - ShareOfFirst) * (w - 1) / most));
            if (places.Count > 0)
                most = places.Count >= MostPlaces ? w : Math.Min(most, Math.Max(w, (int)(PlacesUpToUm / umPerPx) + 1));
        }

        progress?.Report(1);
        return places.Count == 0 ? null : new FinestFeature(places[0].WidthUm, places);
    }

    /// <summary>The largest of the pieces that make the film finer than <paramref name="w"/>.</summary>
    private LargestPieces Pieces(int w)
    {
        var screen = Screen(w);

        // What counts for a screening disc itself is among what it was found to remove when it screened smaller ones.
        var where = screen != w || screened.ContainsKey(w) ? Screened(screen).Own : open;
        var largest = new LargestPieces(4 * MostPlaces);
        if (where is not { IsEmpty: true })
        {
            residue.Find(w, where, piece =>
            {
                if (Counts(piece, w))
                    largest.Add(piece);
            });
        }

        return largest;
    }

    /// <summary>Where a screening disc removes pieces that count for the diameters it screens, and where for any diameter.</summary>
    private (TileMap Own, TileMap Any) Screened(int screen, IProgress<double>? progress = null)
    {
        if (!screened.TryGetValue(screen, out var where))
        {
            var only = IsAfterFirst(screen) ? Screened(FirstScreen).Any : open;
            var least = Enumerable.Range(LeastDiameter, screen - 1).First(v => Screen(v) == screen);
            var touched = new TileMap(bits);
            where = (new TileMap(bits), new TileMap(bits));
            residue.Find(
                screen,
                only,
                piece =>
                {
                    if (Counts(piece, LeastDiameter))
                        where.Any.Mark(piece, touched);
                    if (Counts(piece, least))
                        where.Own.Mark(piece, touched);
                },
                touched,
                progress);
            screened[screen] = where;
        }

        return where;
    }

    /// <summary>Whether a piece is large and long enough, or a whole component, to make the film finer than a diameter.</summary>
    private bool Counts(Blob piece, int diameter) =>
        piece.Area >= LeastAreaShare * diameter * diameter
        && (!piece.Marked || Math.Sqrt(Square(piece.Width) + Square(piece.Height)) >= Math.Max(2.0 * diameter, LeastDiagonalMm * 1000 / umPerPx));

    private void Collect(LargestPieces pieces, int w, List<FilmPlace> places)
    {
        foreach (var piece in pieces.InOrder())
        {
            if (places.Count >= MostPlaces)
                return;
            var (x, y) = residue.Place(w, piece);
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

    private static bool IsAfterFirst(int screen) => screen < FirstScreen && new DigitalDisc(FirstScreen).IsOpenBy(new DigitalDisc(screen));

    private static double Square(double value) => value * value;
}
