using System.Buffers.Binary;
using BitMiracle.LibTiff.Classic;
using Silkwright.Film.Readers;

namespace Silkwright.Film.TestFilms;

/// <summary>Writes a 1-bit TIFF strip by strip, black where it prints.</summary>
public static class FilmTiffWriter
{
    /// <summary>Rows of a strip.</summary>
    public const int StripRows = 256;

    /// <summary>Writes a film whose strips are made one after the other.</summary>
    /// <param name="path">File to write; replaced if it is there.</param>
    /// <param name="width">[px]</param>
    /// <param name="height">[px]</param>
    /// <param name="dpi">[1/in]</param>
    /// <param name="strip">Given the first row and the rows of a strip, fills the cleared bitmap, row 0 being the first.</param>
    /// <param name="compression">How strips are packed.</param>
    /// <exception cref="IOException">The file cannot be written.</exception>
    public static void Write(
        string path, int width, int height, double dpi, Action<int, int, PackedBitmap> strip, FilmCompression compression = FilmCompression.CcittG4)
    {
        ArgumentNullException.ThrowIfNull(strip);
        QuietTiffErrors.Install();
        using var tiff = Tiff.Open(path, "w") ?? throw new IOException($"Cannot write {path}.");
        _ = tiff.SetField(TiffTag.IMAGEWIDTH, width);
        _ = tiff.SetField(TiffTag.IMAGELENGTH, height);
        _ = tiff.SetField(TiffTag.BITSPERSAMPLE, 1);
        _ = tiff.SetField(TiffTag.SAMPLESPERPIXEL, 1);
        _ = tiff.SetField(TiffTag.COMPRESSION, (Compression)compression);
        _ = tiff.SetField(TiffTag.PHOTOMETRIC, Photometric.MINISWHITE);
        _ = tiff.SetField(TiffTag.FILLORDER, FillOrder.MSB2LSB);
        _ = tiff.SetField(TiffTag.ROWSPERSTRIP, StripRows);
        _ = tiff.SetField(TiffTag.PLANARCONFIG, PlanarConfig.CONTIG);
        _ = tiff.SetField(TiffTag.XRESOLUTION, dpi);
        _ = tiff.SetField(TiffTag.YRESOLUTION, dpi);
        _ = tiff.SetField(TiffTag.RESOLUTIONUNIT, ResUnit.INCH);
        var rowBytes = (width + 7) / 8;
        var bits = new PackedBitmap(width, Math.Min(StripRows, height));
        var bytes = new byte[rowBytes * bits.Height];
        var padded = new byte[bits.Stride * 8];
        for (var top = 0; top < height; top += StripRows)
        {
            bits.All.Clear();
            var rows = Math.Min(StripRows, height - top);
            strip(top, rows, bits);
            for (var y = 0; y < rows; y++)
            {
                var row = bits.Row(y);
                for (var i = 0; i < row.Length; i++)
                    BinaryPrimitives.WriteUInt64BigEndian(padded.AsSpan(i * 8), row[i]);
                Array.Copy(padded, 0, bytes, y * rowBytes, rowBytes);
            }

            if (tiff.WriteEncodedStrip(top / StripRows, bytes, rows * rowBytes) < 0)
                throw new IOException($"Cannot write {path}.");
        }
    }
}
