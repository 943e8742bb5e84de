using System.Buffers.Binary;
using Silkwright.Film.Readers;

namespace Silkwright.Film.TestFilms;

/// <summary>Spoils film files as damage and malice do: the same seed spoils alike.</summary>
public static class FilmMutator
{
    /// <summary>Where headers and directories mostly lie. [byte]</summary>
    private const int HeadBytes = 300;

    private const int LongestBlock = 64;

    private static readonly uint[] Numbers = [0, 1, 2, 7, 8, 0x7F, 0x80, 0xFF, 0x100, 0x7FFF, 0x8000, 0xFFFF, 0x10000, 200_000, 0x7FFFFFFF, 0x80000000, 0xFFFFFFFE, 0xFFFFFFFF];

    /// <summary>A spoilt copy: one to six changes of bytes, numbers, blocks or length.</summary>
    /// <param name="film">A sound file.</param>
    /// <param name="random">Seeded.</param>
    public static byte[] Spoil(byte[] film, Random random)
    {
        ArgumentNullException.ThrowIfNull(film);
        ArgumentNullException.ThrowIfNull(random);
        var bytes = (byte[])film.Clone();
        for (var left = random.Next(2) == 0 ? 1 : random.Next(2, 7); left > 0 && bytes.Length > 16; left--)
            bytes = Changed(bytes, random);

        // A header with a wrong check value is refused at once; half of the spoilt ones pass it.
        if (random.Next(2) == 0)
            MendPngChecks(bytes);
        return bytes;
    }

    private static byte[] Changed(byte[] bytes, Random random)
    {
        var at = random.Next(2) == 0 ? random.Next(bytes.Length) : random.Next(Math.Min(HeadBytes, bytes.Length));
        if (random.Next(4) == 0)
            at = Math.Max(0, bytes.Length - 1 - random.Next(HeadBytes));
        var number = Numbers[random.Next(Numbers.Length)];
        switch (random.Next(9))
        {
            case 0:
                bytes[at] ^= (byte)(1 << random.Next(8));
                return bytes;
            case 1:
                bytes[at] = (byte)random.Next(256);
                return bytes;
            case 2 when at + 2 <= bytes.Length:
                BinaryPrimitives.WriteUInt16LittleEndian(bytes.AsSpan(at), (ushort)number);
                return bytes;
            case 3 when at + 4 <= bytes.Length:
                BinaryPrimitives.WriteUInt32LittleEndian(bytes.AsSpan(at), number);
                return bytes;
            case 4 when at + 4 <= bytes.Length:
                BinaryPrimitives.WriteUInt32BigEndian(bytes.AsSpan(at), number);
                return bytes;
            case 5:
                return [.. bytes[..Math.Max(8, random.Next(bytes.Length))]];
            case 6:
                var cut = Math.Min(random.Next(1, LongestBlock), bytes.Length - at);
                return [.. bytes[..at], .. bytes[(at + cut)..]];
            case 7:
                var from = random.Next(bytes.Length);
                return [.. bytes[..at], .. bytes.AsSpan(from, Math.Min(random.Next(1, LongestBlock), bytes.Length - from)), .. bytes[at..]];
            default:
                var length = Math.Min(random.Next(1, LongestBlock), bytes.Length - at);
                bytes.AsSpan(at, length).Fill((byte)random.Next(256));
                return bytes;
        }
    }

    /// <summary>PNG specification, third edition, clause 5.3 and annex D.</summary>
    private static void MendPngChecks(byte[] bytes)
    {
        if (bytes.Length < 8 || bytes[1] != (byte)'P' || bytes[2] != (byte)'N')
            return;
        for (var at = 8; at + 12 <= bytes.Length;)
        {
            var length = BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(at));
            if (length > bytes.Length - at - 12)
                return;
            var check = PngHeader.Check(bytes.AsSpan(at + 4, 4), bytes.AsSpan(at + 8, (int)length));
            BinaryPrimitives.WriteUInt32BigEndian(bytes.AsSpan(at + 8 + (int)length), check);
            at += 12 + (int)length;
        }
    }
}
