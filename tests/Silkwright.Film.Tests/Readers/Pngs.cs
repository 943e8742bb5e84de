using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;

namespace Silkwright.Film.Tests.Readers;

/// <summary>Writes small PNG files of every colour type, with every filter, as the PNG specification (W3C 2025) says.</summary>
internal static class Pngs
{
    public static byte[] Make(
        bool[,] pixels, int colourType, int bitDepth, uint pixelsPerMetre, byte interlace = 0, (uint Width, uint Height)? claimed = null)
    {
        var (width, height) = (pixels.GetLength(0), pixels.GetLength(1));
        using var file = new MemoryStream();
        file.Write([0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A]);
        var header = new byte[13];
        BinaryPrimitives.WriteUInt32BigEndian(header, claimed?.Width ?? (uint)width);
        BinaryPrimitives.WriteUInt32BigEndian(header.AsSpan(4), claimed?.Height ?? (uint)height);
        (header[8], header[9], header[12]) = ((byte)bitDepth, (byte)colourType, interlace);
        Chunk(file, "IHDR", header);
        if (colourType == 3)
            Chunk(file, "PLTE", [250, 250, 240, 40, 10, 90]);
        var physical = new byte[9];
        BinaryPrimitives.WriteUInt32BigEndian(physical, pixelsPerMetre);
        BinaryPrimitives.WriteUInt32BigEndian(physical.AsSpan(4), pixelsPerMetre);
        physical[8] = 1;
        if (pixelsPerMetre > 0)
            Chunk(file, "pHYs", physical);
        var packed = Packed(pixels, colourType, bitDepth);
        Chunk(file, "IDAT", packed[..(packed.Length / 2)]);
        Chunk(file, "IDAT", packed[(packed.Length / 2)..]);
        Chunk(file, "IEND", []);
        return file.ToArray();
    }

    private static byte[] Packed(bool[,] pixels, int colourType, int bitDepth)
    {
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Fastest))
        {
            var step = Math.Max(1, Samples(colourType) * bitDepth / 8);
            var above = Array.Empty<byte>();
            for (var y = 0; y < pixels.GetLength(1); y++)
            {
                var row = Row(pixels, y, colourType, bitDepth);
                if (above.Length == 0)
                    above = new byte[row.Length];
                var filter = y % 5;
                zlib.WriteByte((byte)filter);
                for (var i = 0; i < row.Length; i++)
                {
                    int left = i < step ? 0 : row[i - step], up = above[i], corner = i < step ? 0 : above[i - step];
                    var guess = filter switch { 0 => 0, 1 => left, 2 => up, 3 => (left + up) / 2, _ => Paeth(left, up, corner) };
                    zlib.WriteByte((byte)(row[i] - guess));
                }

                above = row;
            }
        }

        return packed.ToArray();
    }

    private static int Samples(int colourType) => colourType switch { 2 => 3, 4 => 2, 6 => 4, _ => 1 };

    private static byte[] Row(bool[,] pixels, int y, int colourType, int bitDepth)
    {
        var bytes = new List<byte>();
        var pending = 0;
        for (var x = 0; x < pixels.GetLength(0); x++)
        {
            var image = pixels[x, y];
            switch (colourType)
            {
                case 2: bytes.AddRange(image ? [90, 60, 120] : [255, 200, 100]); break;
                case 4: bytes.AddRange(image ? [20, 255] : [0, 10]); break;
                case 6: bytes.AddRange(image ? [20, 30, 40, 250] : [0, 0, 0, 0]); break;
                default:
                    var value = colourType == 3 ? (image ? 1 : 0) : (image ? 0 : (1 << bitDepth) - 1);
                    pending = (pending << bitDepth) | value;
                    if ((x + 1) * bitDepth % 8 == 0)
                    {
                        bytes.Add((byte)pending);
                        pending = 0;
                    }
                    else if (x == pixels.GetLength(0) - 1)
                    {
                        bytes.Add((byte)(pending << (8 - ((x + 1) * bitDepth % 8))));
                    }

                    break;
            }
        }

        return [.. bytes];
    }

    private static int Paeth(int a, int b, int c)
    {
        var p = a + b - c;
        var (pa, pb, pc) = (Math.Abs(p - a), Math.Abs(p - b), Math.Abs(p - c));
        return pa <= pb && pa <= pc ? a : pb <= pc ? b : c;
    }

    private static void Chunk(MemoryStream file, string kind, byte[] data)
    {
        Span<byte> number = stackalloc byte[4];
        BinaryPrimitives.WriteUInt32BigEndian(number, (uint)data.Length);
        file.Write(number);
        byte[] body = [.. Encoding.ASCII.GetBytes(kind), .. data];
        file.Write(body);
        BinaryPrimitives.WriteUInt32BigEndian(number, Crc(body));
        file.Write(number);
    }

    private static uint Crc(byte[] bytes)
    {
        var crc = uint.MaxValue;
        foreach (var b in bytes)
        {
            crc ^= b;
            for (var k = 0; k < 8; k++)
                crc = (crc & 1) != 0 ? (crc >> 1) ^ 0xEDB88320u : crc >> 1;
        }

        return ~crc;
    }
}
