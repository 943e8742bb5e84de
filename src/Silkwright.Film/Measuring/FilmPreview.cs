using Silkwright.Film.Readers;
using SkiaSharp;

namespace Silkwright.Film.Measuring;

/// <summary>A small picture of a film.</summary>
public static class FilmPreview
{
    /// <summary>Longest side of any picture drawn. [px]</summary>
    public const int LongestPicturePx = 8192;

    /// <summary>A PNG of the whole film, image black on white, no side longer than <paramref name="longestPx"/>.</summary>
    /// <remarks>A picture pixel is the mean of a whole number of film pixels each way, so that a halftone shows as its tone.</remarks>
    /// <exception cref="Silkwright.Estimates.InputProblemException">The film cannot be read.</exception>
    public static byte[] Png(string path, FilmOptions options, int longestPx, CancellationToken cancel)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(longestPx, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(longestPx, LongestPicturePx);
        using var film = FilmFile.Open(path, options);
        var (width, height) = (film.Header.WidthPx, film.Header.HeightPx);
        var box = (Math.Max(width, height) + longestPx - 1) / longestPx;
        using var picture = new SKBitmap((width + box - 1) / box, (height + box - 1) / box, SKColorType.Gray8, SKAlphaType.Opaque);
        var sums = new int[picture.Width];
        film.ReadRows(
            0,
            height,
            (y, row) =>
            {
                for (var i = 0; i < sums.Length; i++)
                    sums[i] += BitRow.Count(row, i * box, Math.Min(width, (i + 1) * box));
                if ((y + 1) % box != 0 && y + 1 != height)
                    return;
                var grey = picture.GetPixelSpan().Slice(y / box * picture.RowBytes, picture.Width);
                for (var i = 0; i < sums.Length; i++)
                {
                    var area = (Math.Min(width, (i + 1) * box) - (i * box)) * ((y % box) + 1);
                    grey[i] = (byte)(255 - (255L * sums[i] / area));
                }

                Array.Clear(sums);
            },
            cancel);
        return Encode(picture);
    }

    /// <summary>A PNG of a square around a place at full resolution, as much of it as lies on the film.</summary>
    /// <param name="path">The film.</param>
    /// <param name="options">What the file cannot say.</param>
    /// <param name="xMm">Centre from the left. [mm]</param>
    /// <param name="yMm">Centre from the top. [mm]</param>
    /// <param name="sideMm">Side of the square. [mm]</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="Silkwright.Estimates.InputProblemException">The film cannot be read.</exception>
    public static byte[] DetailPng(string path, FilmOptions options, double xMm, double yMm, double sideMm, CancellationToken cancel)
    {
        if (!double.IsFinite(xMm) || !double.IsFinite(yMm))
            throw new ArgumentOutOfRangeException(nameof(xMm), "A place is finite.");
        if (!(sideMm > 0))
            throw new ArgumentOutOfRangeException(nameof(sideMm), "A side is above 0.");
        using var film = FilmFile.Open(path, options);
        var header = film.Header;
        var pxPerMm = header.Dpi / 25.4;
        var side = (int)Math.Clamp(Math.Round(sideMm * pxPerMm), 1, LongestPicturePx);
        var (left, width) = Part(xMm * pxPerMm, side, header.WidthPx);
        var (top, height) = Part(yMm * pxPerMm, side, header.HeightPx);
        using var picture = new SKBitmap(width, height, SKColorType.Gray8, SKAlphaType.Opaque);
        film.ReadRows(
            top,
            height,
            (y, row) =>
            {
                var grey = picture.GetPixelSpan().Slice((y - top) * picture.RowBytes, width);
                for (var x = 0; x < width; x++)
                    grey[x] = (row[(left + x) >> 6] & (1UL << (63 - ((left + x) & 63)))) != 0 ? (byte)0 : (byte)255;
            },
            cancel);
        return Encode(picture);
    }

    private static (int Start, int Length) Part(double centre, int side, int whole)
    {
        var start = (int)Math.Clamp(Math.Round(centre - (side / 2.0)), 0, whole - 1);
        var end = (int)Math.Clamp(Math.Round(centre + (side / 2.0)), start + 1, whole);
        return (start, end - start);
    }

    private static byte[] Encode(SKBitmap picture)
    {
        using var data = picture.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }
}
