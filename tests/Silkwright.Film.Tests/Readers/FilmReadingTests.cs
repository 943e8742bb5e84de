using BitMiracle.LibTiff.Classic;
using Silkwright.Film.Measuring;
using Silkwright.Film.Readers;
using Silkwright.Film.TestFilms;
using SkiaSharp;

namespace Silkwright.Film.Tests.Readers;

/// <summary>Oracle: the files are written by the TIFF library and by Skia, with the pixels kept beside them.</summary>
public class FilmReadingTests
{
    private static readonly FilmOptions At1200 = new(1200);

    [Theory]
    [InlineData(Compression.NONE, Photometric.MINISWHITE)]
    [InlineData(Compression.NONE, Photometric.MINISBLACK)]
    [InlineData(Compression.PACKBITS, Photometric.MINISWHITE)]
    [InlineData(Compression.LZW, Photometric.MINISBLACK)]
    [InlineData(Compression.CCITTFAX4, Photometric.MINISWHITE)]
    [InlineData(Compression.CCITTFAX4, Photometric.MINISBLACK)]
    public void A_1_bit_tiff_gives_the_pixels_that_were_written(Compression compression, Photometric photometric)
    {
        using var folder = new TestFolder();
        var pixels = Bitmaps.Random(new Random(7), 203, 75, 0.4, 3);
        Tiffs.Write(folder["a.tif"], pixels, 1, compression, photometric, rowsPerStrip: 16);
        Assert.Equal(pixels, Read(folder["a.tif"], At1200));
        Assert.Equal(Inverted(pixels), Read(folder["a.tif"], At1200 with { Polarity = FilmPolarity.Negative }));
    }

    [Theory]
    [InlineData(Compression.NONE, Photometric.MINISBLACK)]
    [InlineData(Compression.PACKBITS, Photometric.MINISWHITE)]
    [InlineData(Compression.LZW, Photometric.MINISBLACK)]
    public void An_8_bit_tiff_is_cut_at_the_middle_and_says_so(Compression compression, Photometric photometric)
    {
        using var folder = new TestFolder();
        var pixels = Bitmaps.Random(new Random(8), 131, 40, 0.4, 3);
        Tiffs.Write(folder["a.tif"], pixels, 8, compression, photometric, rowsPerStrip: 7);
        Assert.Equal(pixels, Read(folder["a.tif"], At1200));
        using var film = FilmFile.Open(folder["a.tif"], At1200);
        Assert.Contains(film.Header.Remarks, r => r.Contains("darker than the middle", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(8)]
    public void A_tiled_tiff_gives_the_pixels_that_were_written(int bits)
    {
        using var folder = new TestFolder();
        var pixels = Bitmaps.Random(new Random(9), 203, 75, 0.4, 3);
        Tiffs.WriteTiles(folder["a.tif"], pixels, bits, 64, 32);
        Assert.Equal(pixels, Read(folder["a.tif"], At1200));
        Assert.Equal(Part(pixels, 40, 20), ReadPart(folder["a.tif"], 40, 20));
    }

    [Theory]
    [InlineData(ResUnit.INCH, 1200, 1200)]
    [InlineData(ResUnit.CENTIMETER, 500, 1270)]
    public void The_resolution_is_read_in_its_unit(ResUnit unit, double value, double dpi)
    {
        using var folder = new TestFolder();
        Tiffs.Write(folder["a.tif"], new bool[40, 40], 1, Compression.CCITTFAX4, Photometric.MINISWHITE, 16, unit, value);
        using var film = FilmFile.Open(folder["a.tif"], new FilmOptions());
        Assert.Equal(dpi, film.Header.Dpi, 0.01);
    }

    [Fact]
    public void Any_rows_can_be_read_alone()
    {
        using var folder = new TestFolder();
        var pixels = Bitmaps.Random(new Random(10), 203, 75, 0.4, 3);
        Tiffs.Write(folder["a.tif"], pixels, 1, Compression.CCITTFAX4, Photometric.MINISWHITE, 16);
        Assert.Equal(Part(pixels, 37, 22), ReadPart(folder["a.tif"], 37, 22));
    }

    [Fact]
    public void Our_own_writer_is_read_back()
    {
        using var folder = new TestFolder();
        var pixels = Bitmaps.Random(new Random(11), 333, 600, 0.4, 3);
        FilmTiffWriter.Write(folder["a.tif"], 333, 600, 1200, (top, rows, strip) =>
        {
            for (var y = 0; y < rows; y++)
            {
                for (var x = 0; x < 333; x++)
                    strip[x, y] = pixels[x, top + y];
            }
        });
        Assert.Equal(pixels, Read(folder["a.tif"], new FilmOptions()));
    }

    [Theory]
    [InlineData(SKColorType.Gray8)]
    [InlineData(SKColorType.Rgba8888)]
    public void A_png_written_by_skia_gives_the_pixels_that_were_drawn(SKColorType type)
    {
        using var folder = new TestFolder();
        var pixels = Bitmaps.Random(new Random(12), 203, 75, 0.4, 3);
        using var picture = new SKBitmap(203, 75, type, SKAlphaType.Opaque);
        for (var y = 0; y < 75; y++)
        {
            for (var x = 0; x < 203; x++)
                picture.SetPixel(x, y, pixels[x, y] ? new SKColor(60, 60, 60) : new SKColor(200, 200, 200));
        }

        File.WriteAllBytes(folder["a.png"], picture.Encode(SKEncodedImageFormat.Png, 100).ToArray());
        Assert.Equal(pixels, Read(folder["a.png"], At1200));
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(0, 8)]
    [InlineData(3, 1)]
    [InlineData(3, 8)]
    [InlineData(2, 8)]
    [InlineData(4, 8)]
    [InlineData(6, 8)]
    public void Every_kind_of_png_gives_the_pixels_that_were_written(int colourType, int bitDepth)
    {
        using var folder = new TestFolder();
        var pixels = Bitmaps.Random(new Random(13), 203, 75, 0.4, 3);
        File.WriteAllBytes(folder["a.png"], Pngs.Make(pixels, colourType, bitDepth, pixelsPerMetre: 47244));
        Assert.Equal(pixels, Read(folder["a.png"], new FilmOptions()));
        using var film = FilmFile.Open(folder["a.png"], new FilmOptions());
        Assert.Equal(1200, film.Header.Dpi, 0.01);
    }

    [Fact]
    public void A_preview_shows_tone_and_a_detail_shows_pixels()
    {
        using var folder = new TestFolder();
        var pixels = new bool[400, 200];
        for (var y = 0; y < 200; y++)
        {
            for (var x = 0; x < 400; x++)
                pixels[x, y] = x < 200 || (x + y) % 2 == 0;
        }

        Tiffs.Write(folder["a.tif"], pixels, 1, Compression.CCITTFAX4, Photometric.MINISWHITE, 16);
        using var preview = SKBitmap.Decode(FilmPreview.Png(folder["a.tif"], At1200, 100, CancellationToken.None));
        Assert.Equal((100, 50), (preview.Width, preview.Height));
        Assert.Equal(0, preview.GetPixel(20, 20).Red);
        Assert.InRange(preview.GetPixel(80, 20).Red, 126, 129);
        using var detail = SKBitmap.Decode(
            FilmPreview.DetailPng(folder["a.tif"], At1200, 200 * 25.4 / 1200, 100 * 25.4 / 1200, 40 * 25.4 / 1200, CancellationToken.None));
        Assert.Equal((40, 40), (detail.Width, detail.Height));
        for (var y = 0; y < 40; y++)
        {
            for (var x = 0; x < 40; x++)
                Assert.Equal(pixels[180 + x, 80 + y] ? 0 : 255, detail.GetPixel(x, y).Red);
        }
    }

    internal static bool[,] Read(string path, FilmOptions options)
    {
        using var film = FilmFile.Open(path, options);
        return Bitmaps.Pixels(FilmFile.ReadBits(film, null, CancellationToken.None));
    }

    private static bool[,] ReadPart(string path, int first, int count)
    {
        using var film = FilmFile.Open(path, At1200);
        var bits = new PackedBitmap(film.Header.WidthPx, count);
        film.ReadRows(first, count, (y, row) => row.CopyTo(bits.Row(y - first)), CancellationToken.None);
        return Bitmaps.Pixels(bits);
    }

    private static bool[,] Part(bool[,] pixels, int first, int count)
    {
        var part = new bool[pixels.GetLength(0), count];
        for (var y = 0; y < count; y++)
        {
            for (var x = 0; x < part.GetLength(0); x++)
                part[x, y] = pixels[x, first + y];
        }

        return part;
    }

    private static bool[,] Inverted(bool[,] pixels)
    {
        var other = (bool[,])pixels.Clone();
        for (var y = 0; y < pixels.GetLength(1); y++)
        {
            for (var x = 0; x < pixels.GetLength(0); x++)
                other[x, y] = !pixels[x, y];
        }

        return other;
    }
}
