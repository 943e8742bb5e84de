using Silkwright.Artwork;

namespace Silkwright.Film.Measuring;

/// <summary>How much of the image is no wider than a few widths: docs/engines/film.md, "Widths".</summary>
internal static class WidthShares
{
    private static readonly double[] WidthsUm = [100, 150, 200, 300, 500, 1000];

    /// <summary>The shares, exact on the whole film; widths that the grid cannot tell apart from 0 or that are too large for it are left out.</summary>
    public static IReadOnlyList<WidthShare> Of(FilmBitmap bits, FilmCells cells, double dpi, CancellationToken cancel)
    {
        var image = bits.Count();
        if (image == 0)
            return [];
        var tiles = new OpeningTiles(bits, cells, false, cancel);
        return
        [
            .. WidthsUm
                .Select(width => (Width: width, Pixels: (int)(width * dpi / 25400)))
                .Where(w => w.Pixels >= 1 && w.Pixels < DigitalDisc.MostDiameter)
                .Select(w => new WidthShare(w.Width, 100.0 * tiles.Area(w.Pixels + 1) / image)),
        ];
    }
}
