using System.Buffers.Binary;
using System.IO.Compression;
using BitMiracle.LibTiff.Classic;
using Silkwright.Film.Readers;
using SkiaSharp;

namespace Silkwright.Film.TestFilms;

/// <summary>Sound films of every kind that is read, a few hundred pixels large: what the spoilt ones are made from.</summary>
public static class SmallFilms
{
    private const int Width = 200, Height = 140;
    private const double Dpi = 600;
    private const int TilePx = 32;

    /// <summary>The files, each with its kind.</summary>
    /// <param name="folder">To write them in.</param>
    public static IReadOnlyList<(string Kind, byte[] Bytes)> All(string folder)
    {
        ArgumentException.ThrowIfNullOrEmpty(folder);
        var recipe = FilmRecipeReader.Parse(
            """{"name":"s","widthMm":8.4667,"heightMm":5.9267,"dpi":600,"films":[{"file":"s.tif","shapes":[{"disc":[3,3,1.5]},{"line":[1,5,8,1],"lineMm":0.2},{"rect":[4.5,2,3,3],"halftone":{"lpi":60,"angle":22.5,"tone":[20,60],"linear":[4.5,0,7.5,0]}}]}]}""",
            "s.json")[0];
        var bits = FilmMaker.Bits(recipe);
        var path = Path.Combine(folder, "small");
        var films = new List<(string Kind, byte[] Bytes)>();
        foreach (var compression in Enum.GetValues<FilmCompression>())
        {
            FilmTiffWriter.Write(path, Width, Height, Dpi, (top, rows, strip) => Copy(bits, top, rows, strip), compression);
            films.Add(("TIFF", File.ReadAllBytes(path)));
        }

        films.Add(("TIFF", Greys(path, bits, tiled: false)));
        films.Add(("TIFF", Greys(path, bits, tiled: true)));
        films.Add(("PNG", Png(bits)));
        films.Add(("PNG", ColourPng(bits)));
        films.Add(("PDF", PdfPageWriter.Make(36, 24, 0, "q 0 g 5 5 10 10 re f Q q 0 0 m 30 20 l 20 3 l h f Q 0.3 w 2 20 m 30 2 l S")));
        return films;
    }

    private static void Copy(PackedBitmap from, int top, int rows, PackedBitmap strip)
    {
        for (var y = 0; y < rows; y++)
            from.Row(top + y).CopyTo(strip.Row(y));
    }

    /// <summary>8 bits a pixel, in strips packed by deflate or in tiles packed by LZW.</summary>
    private static byte[] Greys(string path, PackedBitmap bits, bool tiled)
    {
        QuietTiffErrors.Install();
        using (var tiff = Tiff.Open(path, "w") ?? throw new IOException($"Cannot write {path}."))
        {
            _ = tiff.SetField(TiffTag.IMAGEWIDTH, Width);
            _ = tiff.SetField(TiffTag.IMAGELENGTH, Height);
            _ = tiff.SetField(TiffTag.BITSPERSAMPLE, 8);
            _ = tiff.SetField(TiffTag.SAMPLESPERPIXEL, 1);
            _ = tiff.SetField(TiffTag.PHOTOMETRIC, Photometric.MINISBLACK);
            _ = tiff.SetField(TiffTag.PLANARCONFIG, PlanarConfig.CONTIG);
            _ = tiff.SetField(TiffTag.COMPRESSION, tiled ? Compression.LZW : Compression.ADOBE_DEFLATE);
            _ = tiled ? tiff.SetField(TiffTag.TILEWIDTH, TilePx) && tiff.SetField(TiffTag.TILELENGTH, TilePx) : tiff.SetField(TiffTag.ROWSPERSTRIP, TilePx);
            var (side, number) = (tiled ? TilePx : Width, 0);
            for (var top = 0; top < Height; top += TilePx)
            {
                for (var left = 0; left < Width; left += side)
                {
                    var piece = new byte[side * (tiled ? TilePx : Math.Min(TilePx, Height - top))];
                    for (var i = 0; i < piece.Length; i++)
                        piece[i] = Grey(bits, left + (i % side), top + (i / side));
                    _ = tiled ? tiff.WriteEncodedTile(number++, piece, piece.Length) : tiff.WriteEncodedStrip(number++, piece, piece.Length);
                }
            }
        }

        return File.ReadAllBytes(path);
    }

    private static byte Grey(PackedBitmap bits, int x, int y) => x < bits.Width && y < bits.Height && bits[x, y] ? (byte)40 : (byte)210;

    /// <summary>1 bit a pixel, black where it prints. PNG specification, third edition, clauses 5 and 11.</summary>
    private static byte[] Png(PackedBitmap bits)
    {
        using var file = new MemoryStream();
        file.Write([0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A]);
        var header = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(header, Width);
        BinaryPrimitives.WriteInt32BigEndian(header.AsSpan(4), Height);
        header[8] = 1;
        Chunk(file, "IHDR"u8, header);
        using (var packed = new MemoryStream())
        {
            using (var zlib = new ZLibStream(packed, CompressionLevel.Fastest))
            {
                for (var y = 0; y < Height; y++)
                {
                    var row = new byte[1 + ((Width + 7) / 8)];
                    for (var x = 0; x < Width; x++)
                        row[1 + (x >> 3)] |= (byte)(bits[x, y] ? 0 : 0x80 >> (x & 7));
                    zlib.Write(row);
                }
            }

            Chunk(file, "IDAT"u8, packed.ToArray());
        }

        Chunk(file, "IEND"u8, []);
        return file.ToArray();
    }

    private static void Chunk(MemoryStream file, ReadOnlySpan<byte> kind, byte[] bytes)
    {
        Span<byte> number = stackalloc byte[4];
        BinaryPrimitives.WriteInt32BigEndian(number, bytes.Length);
        file.Write(number);
        file.Write(kind);
        file.Write(bytes);
        BinaryPrimitives.WriteUInt32BigEndian(number, PngHeader.Check(kind, bytes));
        file.Write(number);
    }

    private static byte[] ColourPng(PackedBitmap bits)
    {
        using var picture = new SKBitmap(Width, Height, SKColorType.Rgba8888, SKAlphaType.Unpremul);
        for (var y = 0; y < Height; y++)
        {
            for (var x = 0; x < Width; x++)
                picture.SetPixel(x, y, bits[x, y] ? SKColors.DarkRed : SKColors.Transparent);
        }

        using var data = picture.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }
}
