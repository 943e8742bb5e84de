using BitMiracle.LibTiff.Classic;

namespace Silkwright.Film.Tests.Readers;

/// <summary>Writes small TIFF files of every kind with the TIFF library.</summary>
internal static class Tiffs
{
    public static void Write(
        string path,
        bool[,] pixels,
        int bits,
        Compression compression,
        Photometric photometric,
        int rowsPerStrip,
        ResUnit unit = ResUnit.INCH,
        double? resolution = 1200)
    {
        using var tiff = Open(path, pixels, bits, compression, photometric);
        _ = tiff.SetField(TiffTag.ROWSPERSTRIP, rowsPerStrip);
        if (resolution is { } dpi)
        {
            _ = tiff.SetField(TiffTag.XRESOLUTION, dpi);
            _ = tiff.SetField(TiffTag.YRESOLUTION, dpi);
            _ = tiff.SetField(TiffTag.RESOLUTIONUNIT, unit);
        }

        for (var y = 0; y < pixels.GetLength(1); y++)
            _ = tiff.WriteScanline(Row(pixels, 0, pixels.GetLength(0), y, bits, photometric), y);
    }

    public static void WriteTiles(string path, bool[,] pixels, int bits, int width, int height)
    {
        using var tiff = Open(path, pixels, bits, Compression.LZW, Photometric.MINISBLACK);
        _ = tiff.SetField(TiffTag.TILEWIDTH, width);
        _ = tiff.SetField(TiffTag.TILELENGTH, height);
        var number = 0;
        for (var top = 0; top < pixels.GetLength(1); top += height)
        {
            for (var left = 0; left < pixels.GetLength(0); left += width)
            {
                var rows = Enumerable.Range(top, height).SelectMany(y => Row(pixels, left, width, y, bits, Photometric.MINISBLACK));
                byte[] tile = [.. rows];
                Assert.True(tiff.WriteEncodedTile(number++, tile, tile.Length) >= 0);
            }
        }
    }

    private static Tiff Open(string path, bool[,] pixels, int bits, Compression compression, Photometric photometric)
    {
        var tiff = Tiff.Open(path, "w");
        _ = tiff.SetField(TiffTag.IMAGEWIDTH, pixels.GetLength(0));
        _ = tiff.SetField(TiffTag.IMAGELENGTH, pixels.GetLength(1));
        _ = tiff.SetField(TiffTag.BITSPERSAMPLE, bits);
        _ = tiff.SetField(TiffTag.SAMPLESPERPIXEL, 1);
        _ = tiff.SetField(TiffTag.COMPRESSION, compression);
        _ = tiff.SetField(TiffTag.PHOTOMETRIC, photometric);
        _ = tiff.SetField(TiffTag.PLANARCONFIG, PlanarConfig.CONTIG);
        _ = tiff.SetField(TiffTag.FILLORDER, FillOrder.MSB2LSB);
        return tiff;
    }

    private static byte[] Row(bool[,] pixels, int left, int width, int y, int bits, Photometric photometric)
    {
        var row = new byte[((width * bits) + 7) / 8];
        for (var x = 0; x < width; x++)
        {
            var image = left + x < pixels.GetLength(0) && y < pixels.GetLength(1) && pixels[left + x, y];
            var dark = photometric == Photometric.MINISWHITE ? image : !image;
            if (bits == 8)
                row[x] = Level(image, photometric);
            else if (dark)
                row[x >> 3] |= (byte)(0x80 >> (x & 7));
        }

        return row;
    }

    /// <summary>Greys on either side of the middle, not only black and white.</summary>
    private static byte Level(bool image, Photometric photometric) =>
        photometric == Photometric.MINISWHITE ? (byte)(image ? 180 : 90) : (byte)(image ? 90 : 180);
}
