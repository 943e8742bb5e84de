using Silkwright.Artwork;
using Silkwright.Film.Measuring;
using Silkwright.Film.Measuring.Halftones;
using Silkwright.Film.Readers;

namespace Silkwright.Film.Places;

/// <summary>Whether a pixel lies in a halftone, told by the film about it as the measuring tells it of the whole: docs/engines/film.md, "Local width".</summary>
internal static class NearbyHalftone
{
    /// <summary>Looked at to each side: there a wedge of 30° still holds the dots that make a halftone. [periods]</summary>
    private const double ReachPeriods = 12;

    /// <summary>Looked at to each side at most, which is some 50 periods of a ruling of 60 at 5000 dpi. [px]</summary>
    private const int MostReachPx = 4096;

    /// <summary>Whether it is a halftone's pixel, or one within a period of it, and no wider than the largest disc between four dots of that ruling however small.</summary>
    /// <param name="film">An open film.</param>
    /// <param name="x">[px]</param>
    /// <param name="y">[px]</param>
    /// <param name="widthPx">Width of image or gap there. [px]</param>
    /// <param name="zones">The film's halftones: outside the upright boxes about them nothing is looked at.</param>
    /// <param name="cancel">Stops the work.</param>
    public static bool Holds(IFilmSource film, int x, int y, double widthPx, IReadOnlyList<HalftoneZone> zones, CancellationToken cancel)
    {
        var header = film.Header;
        var (xMm, yMm) = ((x + 0.5) * 25.4 / header.Dpi, (y + 0.5) * 25.4 / header.Dpi);
        var period = zones
            .Where(zone => xMm >= zone.XMm && xMm <= zone.XMm + zone.WidthMm && yMm >= zone.YMm && yMm <= zone.YMm + zone.HeightMm)
            .Select(zone => header.Dpi / zone.RulingLpi)
            .Where(period => widthPx <= Math.Sqrt(2) * period)
            .DefaultIfEmpty().Max();
        if (period <= 0)
            return false;
        var reach = (int)Math.Min(MostReachPx, Math.Ceiling(ReachPeriods * period));
        var (left, top) = (Math.Max(0, x - reach), Math.Max(0, y - reach));
        var window = FilmWindow.Read(film, left, top, Math.Min(header.WidthPx, x + reach + 1) - left, Math.Min(header.HeightPx, y + reach + 1) - top, cancel);
        var bits = FilmBitmap.Of(window);
        var (image, gap) = FilmComponents.FindAndTakeOutSpecks(bits, header.Dpi, cancel);
        return HalftoneFinder.Find(bits, image, gap, header.Dpi, cancel).Mask is { } mask && mask[x - left, y - top];
    }
}
