using Silkwright.Artwork;

namespace Silkwright.Film.Measuring;

/// <summary>How much of the image is no wider than a few widths: docs/engines/film.md, "Widths".</summary>
internal static class WidthShares
{
    private static readonly double[] WidthsUm = [100, 150, 200, 300, 500, 1000];

    /// <summary>The shares, exact on the whole film; widths that the grid cannot tell apart from 0 or that are too large for it are left out.</summary>
    public static IReadOnlyList<WidthShare> Of(FilmBitmap bits, FilmCells cells, double dpi, IProgress<double>? progress, CancellationToken cancel)
    {
        var image = bits.Count();
        if (image == 0)
            return [];
        var tiles = new OpeningTiles(bits, cells, false, cancel);
        var widths = WidthsUm.Select(width => (Um: width, Pixels: (int)(width * dpi / 25400))).Where(w => w.Pixels >= 1 && w.Pixels < DigitalDisc.MostDiameter).ToArray();
        var shares = new WidthShare[widths.Length];
        for (var i = 0; i < widths.Length; i++)
        {
            shares[i] = new WidthShare(widths[i].Um, 100.0 * tiles.Area(widths[i].Pixels + 1) / image);
            progress?.Report((i + 1.0) / widths.Length);
        }

        return shares;
    }
}
