using Silkwright.Estimates;
using Silkwright.Film.Measuring;

namespace Silkwright.Film.Readers;

/// <summary>Opens a film by what its first bytes say it is.</summary>
public static class FilmFile
{
    private static ReadOnlySpan<byte> PngSignature => [0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A];

    /// <summary>Opens a TIFF, PNG or PDF and checks its header; no pixels are read and nothing large is allocated.</summary>
    /// <exception cref="InputProblemException">Missing, not a film, damaged, too large, or of a kind that is not read.</exception>
    public static IFilmSource Open(string path, FilmOptions options)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(options);
        var name = Path.GetFileName(path);
        if (options.Dpi is { } dpi && !(dpi >= FilmLimits.LeastDpi && dpi <= FilmLimits.MostDpi))
            throw FilmProblems.BadDpi(name, dpi);
        RegularFile.Require(path, name);
        try
        {
            Span<byte> start = stackalloc byte[8];
            using (var file = File.OpenRead(path))
            {
                var got = file.ReadAtLeast(start, start.Length, throwOnEndOfStream: false);
                start = start[..got];
            }

            if (start.StartsWith("%PDF-"u8))
                return PdfFilm.Open(path, options);
            if (options.Page != 1)
                throw FilmProblems.NoPages(name, options.Page);
            if (start.SequenceEqual(PngSignature))
                return PngFilm.Open(path, options);
            if (start.Length >= 4 && (start[..4].SequenceEqual("II*\0"u8) || start[..4].SequenceEqual("MM\0*"u8)))
                return TiffFilm.Open(path, options);
            throw FilmProblems.NotAFilm(name);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw FilmProblems.Unreadable(name, failure);
        }
    }

    /// <summary>Reads a whole film into packed bits, an eighth of a byte a pixel.</summary>
    public static PackedBitmap ReadBits(IFilmSource source, IProgress<double>? progress, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(source);
        var bits = new PackedBitmap(source.Header.WidthPx, source.Header.HeightPx);
        source.ReadRows(
            0,
            bits.Height,
            (y, row) =>
            {
                row.CopyTo(bits.Row(y));
                if ((y & 1023) == 0)
                    progress?.Report((double)y / bits.Height);
            },
            cancel);
        return bits;
    }
}
