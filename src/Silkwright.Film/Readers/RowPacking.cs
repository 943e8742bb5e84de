using System.Buffers.Binary;
using System.Runtime.InteropServices;

namespace Silkwright.Film.Readers;

/// <summary>Turns a file's rows of bytes into packed words.</summary>
internal static class RowPacking
{
    /// <summary>Grey below this is image: the middle of 0 to 255.</summary>
    public const int Threshold = 128;

    /// <summary>Remark of a film that had greys.</summary>
    public const string ThresholdRemark = "The film has more than two levels; everything darker than the middle was taken as black.";

    /// <summary>Packs a row whose bits are already one a pixel, the leftmost in the highest bit of the first byte.</summary>
    public static void Bits(ReadOnlySpan<byte> bytes, Span<ulong> row, bool invert, ulong lastMask)
    {
        var whole = Math.Min(bytes.Length >> 3, row.Length);
        BinaryPrimitives.ReverseEndianness(MemoryMarshal.Cast<byte, ulong>(bytes[..(whole << 3)]), row[..whole]);
        if (whole < row.Length)
        {
            Span<byte> rest = stackalloc byte[8];
            rest.Clear();
            bytes[(whole << 3)..Math.Min(bytes.Length, (whole << 3) + 8)].CopyTo(rest);
            row[whole] = BinaryPrimitives.ReadUInt64BigEndian(rest);
        }

        if (invert)
            PackedBitmap.Invert(row, lastMask);
        else
            row[^1] &= lastMask;
    }

    /// <summary>Packs a row of greys, one byte a pixel, 0 black; with <paramref name="invert"/> 0 is white.</summary>
    public static void Greys(ReadOnlySpan<byte> greys, Span<ulong> row, bool invert, ulong lastMask)
    {
        row.Clear();
        for (var x = 0; x < greys.Length; x++)
        {
            if (greys[x] < Threshold != invert)
                row[x >> 6] |= 1UL << (63 - (x & 63));
        }

        row[^1] &= lastMask;
    }
}
