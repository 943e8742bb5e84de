using System.Globalization;
using Silkwright.Artwork;
using Silkwright.Estimates;
using Silkwright.Film.Measuring;
using Silkwright.Film.Readers;

namespace Silkwright.Film.Places;

/// <summary>Looks at one spot of a film at full resolution; only the rows about it are read.</summary>
public static class FilmSpots
{
    /// <summary>A speck that touches what can matter ends within so many pixels. [px]</summary>
    private const int SpeckReachPx = FilmComponents.SpeckArea;

    /// <summary>What is at a spot.</summary>
    /// <param name="film">An open film.</param>
    /// <param name="xMm">From the film's left edge. [mm]</param>
    /// <param name="yMm">From the film's top edge. [mm]</param>
    /// <param name="zones">The film's halftones; empty where they are not known, and then none is told.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="InputProblemException">The spot is not on the film, or the film is damaged there.</exception>
    public static FilmSpot At(IFilmSource film, double xMm, double yMm, IReadOnlyList<HalftoneZone> zones, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(film);
        ArgumentNullException.ThrowIfNull(zones);
        var header = film.Header;
        var mmPerPx = 25.4 / header.Dpi;
        ThrowIfOff(header, xMm, yMm);
        var (x, y) = (Pixel(xMm / mmPerPx, header.WidthPx), Pixel(yMm / mmPerPx, header.HeightPx));
        var reach = LocalWidth.ReachPx + SpeckReachPx;
        var (left, top) = (Math.Max(0, x - reach), Math.Max(0, y - reach));
        var window = FilmWindow.Read(film, left, top, Math.Min(header.WidthPx, x + reach + 1) - left, Math.Min(header.HeightPx, y + reach + 1) - top, cancel);
        var isImage = window[x - left, y - top];
        TakeOutSpecks(window, cancel);
        var width = LocalWidth.At(window, x - left, y - top);
        return new FilmSpot
        {
            XMm = (x + 0.5) * mmPerPx,
            YMm = (y + 0.5) * mmPerPx,
            IsImage = width.IsImage,
            IsSpeck = width.IsImage != isImage,
            WidthUm = width.WidthPx * mmPerPx * 1000,
            PixelUm = mmPerPx * 1000,
            IsWidest = width.IsWidest,
            IsInHalftone = NearbyHalftone.Holds(film, x, y, width.WidthPx, zones, cancel),
            DiscXMm = (left + width.CentreX) * mmPerPx,
            DiscYMm = (top + width.CentreY) * mmPerPx,
        };
    }

    /// <summary>The same for a film that is not open.</summary>
    /// <exception cref="InputProblemException">The film cannot be read, or the spot is not on it.</exception>
    public static FilmSpot At(string path, FilmOptions options, double xMm, double yMm, IReadOnlyList<HalftoneZone> zones, CancellationToken cancel)
    {
        using var film = FilmFile.Open(path, options);
        return At(film, xMm, yMm, zones, cancel);
    }

    /// <summary>Whether the spot is on the film, by its size alone: told before anybody waits for its measuring.</summary>
    /// <exception cref="InputProblemException">The film cannot be opened, or the spot is not on it.</exception>
    public static void ThrowIfOff(string path, FilmOptions options, double xMm, double yMm)
    {
        using var film = FilmFile.Open(path, options);
        ThrowIfOff(film.Header, xMm, yMm);
    }

    private static void TakeOutSpecks(PackedBitmap window, CancellationToken cancel)
    {
        var film = FilmBitmap.Of(window);
        _ = FilmComponents.FindAndTakeOutSpecks(film, null, cancel);
        for (var y = 0; y < window.Height; y++)
            film.Read(y, 0, window.Row(y));
    }

    private static int Pixel(double place, int size) => Math.Min(size - 1, (int)place);

    private static void ThrowIfOff(FilmHeader header, double xMm, double yMm)
    {
        var (widthMm, heightMm) = (header.WidthPx * 25.4 / header.Dpi, header.HeightPx * 25.4 / header.Dpi);
        if (!(xMm >= 0 && yMm >= 0 && xMm <= widthMm && yMm <= heightMm))
        {
            throw new InputProblemException(new Problem(
                Say($"There is no film at {xMm:0.###}, {yMm:0.###} mm."), "the place", Say($"It is {widthMm:0.#} mm wide and {heightMm:0.#} mm high; places are counted from its top left.")));
        }
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
