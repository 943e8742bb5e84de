using System.IO.Compression;
using Silkwright.Film.Measuring;

namespace Silkwright.Film.Readers;

/// <summary>A film in a PNG file, unpacked a row at a time. PNG specification, third edition (W3C 2025), clauses 7 and 9.</summary>
internal sealed class PngFilm : IFilmSource
{
    private readonly string path;
    private readonly string name;
    private readonly PngHeader png;
    private readonly bool clearPrints;

    private PngFilm(string path, PngHeader png, FilmHeader header, FilmPolarity polarity)
    {
        this.path = path;
        this.png = png;
        name = Path.GetFileName(path);
        Header = header;
        clearPrints = polarity == FilmPolarity.Negative;
    }

    public FilmHeader Header { get; }

    /// <exception cref="Silkwright.Estimates.InputProblemException">Damaged, too large or of a kind that is not read.</exception>
    public static PngFilm Open(string path, FilmOptions options)
    {
        var name = Path.GetFileName(path);
        using var file = File.OpenRead(path);
        var png = PngHeader.Read(file, name);
        var dpi = FilmProblems.Dpi(name, options.Dpi, png.Dpi);
        List<string> remarks = png.ColourType == 0 && png.BitDepth == 1 ? [] : [RowPacking.ThresholdRemark];
        if (png.ColourType is 4 or 6)
            remarks.Add("Transparent parts were taken as white.");
        return new PngFilm(path, png, new FilmHeader(Path.GetFileName(path), png.Width, png.Height, dpi, remarks), options.Polarity);
    }

    public void ReadRows(int first, int count, RowSink sink, CancellationToken cancel)
    {
        try
        {
            using var file = File.OpenRead(path);
            file.Position = png.PixelsAt;
            using var pixels = new ZLibStream(new PngPixelStream(file), CompressionMode.Decompress);
            var bytes = new byte[png.RowBytes + 1];
            var above = new byte[png.RowBytes + 1];
            var greys = new byte[png.Width];
            var row = new ulong[(png.Width + 63) >> 6];
            var lastMask = (png.Width & 63) == 0 ? ulong.MaxValue : ~(ulong.MaxValue >> (png.Width & 63));
            var step = Math.Max(1, png.Samples * png.BitDepth / 8);
            for (var y = 0; y < first + count; y++)
            {
                if ((y & 63) == 0)
                    cancel.ThrowIfCancellationRequested();
                pixels.ReadExactly(bytes);
                if (bytes[0] > 4)
                    throw FilmProblems.Damaged(name, $"row {y + 1} has no known filter");
                Unfilter(bytes[0], bytes.AsSpan(1), above.AsSpan(1), step);
                if (y >= first)
                {
                    Pack(bytes.AsSpan(1), greys, row, lastMask);
                    sink(y, row);
                }

                (bytes, above) = (above, bytes);
            }
        }
        catch (Exception failure) when (failure is InvalidDataException or IOException)
        {
            throw FilmProblems.Damaged(name, "its pixels end early or cannot be unpacked");
        }
    }

    public void Dispose()
    {
        // Each call of ReadRows opens and closes the file itself.
    }

    /// <summary>Luma of a colour by the weights of ITU-R BT.601.</summary>
    internal static byte Grey(int red, int green, int blue) => (byte)(((299 * red) + (587 * green) + (114 * blue) + 500) / 1000);

    private static void Unfilter(int filter, Span<byte> row, ReadOnlySpan<byte> above, int step)
    {
        switch (filter)
        {
            case 1:
                for (var i = step; i < row.Length; i++)
                    row[i] += row[i - step];
                break;
            case 2:
                for (var i = 0; i < row.Length; i++)
                    row[i] += above[i];
                break;
            case 3:
                for (var i = 0; i < row.Length; i++)
                    row[i] += (byte)(((i < step ? 0 : row[i - step]) + above[i]) / 2);
                break;
            case 4:
                for (var i = 0; i < row.Length; i++)
                    row[i] += Paeth(i < step ? 0 : row[i - step], above[i], i < step ? 0 : above[i - step]);
                break;
        }
    }

    private static byte Paeth(int left, int up, int corner)
    {
        var (a, b, c) = (Math.Abs(up - corner), Math.Abs(left - corner), Math.Abs(left + up - (2 * corner)));
        return (byte)(a <= b && a <= c ? left : b <= c ? up : corner);
    }

    private void Pack(ReadOnlySpan<byte> bytes, Span<byte> greys, Span<ulong> row, ulong lastMask)
    {
        if (png.ColourType == 0 && png.BitDepth == 1)
        {
            RowPacking.Bits(bytes, row, !clearPrints, lastMask);
            return;
        }

        for (var x = 0; x < greys.Length; x++)
        {
            greys[x] = png.ColourType switch
            {
                0 => (byte)(Sample(bytes, x) * 255 / ((1 << png.BitDepth) - 1)),
                2 => Grey(bytes[3 * x], bytes[(3 * x) + 1], bytes[(3 * x) + 2]),
                3 => png.PaletteGreys[Sample(bytes, x)],
                4 => OnWhite(bytes[2 * x], bytes[(2 * x) + 1]),
                _ => OnWhite(Grey(bytes[4 * x], bytes[(4 * x) + 1], bytes[(4 * x) + 2]), bytes[(4 * x) + 3]),
            };
        }

        RowPacking.Greys(greys, row, clearPrints, lastMask);
    }

    private static byte OnWhite(int grey, int alpha) => (byte)(((grey * alpha) + (255 * (255 - alpha)) + 127) / 255);

    private int Sample(ReadOnlySpan<byte> bytes, int x)
    {
        if (png.BitDepth == 8)
            return bytes[x];
        var bit = x * png.BitDepth;
        return (bytes[bit >> 3] >> (8 - png.BitDepth - (bit & 7))) & ((1 << png.BitDepth) - 1);
    }
}
