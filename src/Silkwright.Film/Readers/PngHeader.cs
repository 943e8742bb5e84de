using System.Buffers.Binary;

namespace Silkwright.Film.Readers;

/// <summary>What stands before the pixels of a PNG file. PNG specification, third edition (W3C 2025), clauses 5 and 11.</summary>
internal sealed record PngHeader
{
    private const double MetresPerInch = 0.0254;

    public required int Width { get; init; }

    public required int Height { get; init; }

    public required int BitDepth { get; init; }

    public required int ColourType { get; init; }

    public required double? Dpi { get; init; }

    /// <summary>Grey of every palette entry, 0 black.</summary>
    public required byte[] PaletteGreys { get; init; }

    /// <summary>Where the first chunk of pixels starts in the file. [byte]</summary>
    public required long PixelsAt { get; init; }

    public int Samples => ColourType switch { 2 => 3, 4 => 2, 6 => 4, _ => 1 };

    public int RowBytes => (int)((((long)Width * Samples * BitDepth) + 7) / 8);

    /// <exception cref="Silkwright.Estimates.InputProblemException">Damaged, too large or of a kind that is not read.</exception>
    public static PngHeader Read(Stream file, string name)
    {
        file.Position = 8;
        byte[]? header = null;
        byte[] palette = [];
        double? dpi = null;
        Span<byte> start = stackalloc byte[8];
        while (true)
        {
            var at = file.Position;
            if (file.ReadAtLeast(start, 8, throwOnEndOfStream: false) < 8)
                throw FilmProblems.Damaged(name, "it ends before its pixels");
            var length = BinaryPrimitives.ReadUInt32BigEndian(start);
            var kind = start[4..];
            if (kind.SequenceEqual("IDAT"u8))
                return From(header, palette, dpi, at, name);
            if (file.Position + length + 4 > file.Length)
                throw FilmProblems.Damaged(name, "it ends before its pixels");
            if (kind.SequenceEqual("IHDR"u8) && length == 13)
                header = Take(file, kind, 13, name);
            else if (kind.SequenceEqual("PLTE"u8) && length <= 768)
                palette = Take(file, kind, (int)length, name);
            else if (kind.SequenceEqual("pHYs"u8) && length == 9)
                dpi = PhysicalDpi(Take(file, kind, 9, name));
            file.Position = at + 12 + length;
        }
    }

    /// <summary>The check value of a chunk: PNG specification, third edition, annex D.</summary>
    internal static uint Check(ReadOnlySpan<byte> kind, ReadOnlySpan<byte> bytes) => ~Crc(bytes, Crc(kind, uint.MaxValue));

    private static double? PhysicalDpi(byte[] chunk)
    {
        var (x, y) = (BinaryPrimitives.ReadUInt32BigEndian(chunk), BinaryPrimitives.ReadUInt32BigEndian(chunk.AsSpan(4)));

        // The unit is the metre, or none; pixels that are not square have no one resolution.
        return chunk[8] != 1 || Math.Abs((double)x - y) > 0.01 * Math.Max(x, y) ? null : Math.Round(x * MetresPerInch, 2);
    }

    /// <summary>What a chunk holds, held to the check value behind it: a header read wrong is a film of another size.</summary>
    private static byte[] Take(Stream file, ReadOnlySpan<byte> kind, int count, string name)
    {
        var bytes = new byte[count + 4];
        file.ReadExactly(bytes);
        if (Check(kind, bytes.AsSpan(0, count)) != BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(count)))
            throw FilmProblems.Damaged(name, "its header does not match its check value");
        return bytes[..count];
    }

    private static uint Crc(ReadOnlySpan<byte> bytes, uint crc)
    {
        foreach (var one in bytes)
        {
            crc ^= one;
            for (var bit = 0; bit < 8; bit++)
                crc = (crc & 1) != 0 ? 0xEDB88320 ^ (crc >> 1) : crc >> 1;
        }

        return crc;
    }

    private static PngHeader From(byte[]? header, byte[] palette, double? dpi, long at, string name)
    {
        if (header is null)
            throw FilmProblems.Damaged(name, "its header is missing");
        long width = BinaryPrimitives.ReadUInt32BigEndian(header);
        long height = BinaryPrimitives.ReadUInt32BigEndian(header.AsSpan(4));
        FilmProblems.CheckSize(name, width, height);
        var (depth, colour) = (header[8], header[9]);
        var known = colour switch
        {
            0 => depth is 1 or 2 or 4 or 8,
            3 => depth is 1 or 2 or 4 or 8,
            2 or 4 or 6 => depth == 8,
            _ => false,
        };
        if (!known)
            throw FilmProblems.Unsupported(name, $"PNG colour type {colour} with {depth} bits a sample");
        if (header[12] != 0)
            throw FilmProblems.Unsupported(name, "an interlaced PNG, whose rows do not come from the top down");
        if (colour == 3 && palette.Length < 3)
            throw FilmProblems.Damaged(name, "its palette is missing");
        var greys = new byte[256];
        for (var i = 0; i < palette.Length / 3; i++)
            greys[i] = PngFilm.Grey(palette[3 * i], palette[(3 * i) + 1], palette[(3 * i) + 2]);
        return new PngHeader
        {
            Width = (int)width,
            Height = (int)height,
            BitDepth = depth,
            ColourType = colour,
            Dpi = dpi,
            PaletteGreys = greys,
            PixelsAt = at,
        };
    }
}
