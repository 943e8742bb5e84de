using System.Buffers.Binary;

namespace Silkwright.Film.Readers;

/// <summary>The first directory of a TIFF file, with every entry checked against the file's length before it is trusted.</summary>
/// <remarks>TIFF Revision 6.0 (1992), section 2. The pixels themselves are decoded by the TIFF library.</remarks>
internal sealed class TiffDirectory
{
    private const int MostEntries = 512;
    private static readonly int[] TypeSizes = [0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8];

    private readonly Dictionary<int, double[]> values = [];

    private TiffDirectory()
    {
    }

    /// <summary>Length of the whole file. [byte]</summary>
    public long FileLength { get; private init; }

    /// <summary>Whether further pages follow.</summary>
    public bool HasMorePages { get; private set; }

    public bool Has(int tag) => values.ContainsKey(tag);

    public IReadOnlyList<double> All(int tag) => values.GetValueOrDefault(tag) ?? [];

    /// <summary>A tag's first value, or what the standard says when the tag is absent.</summary>
    public long Whole(int tag, long absent) => values.TryGetValue(tag, out var all) && all.Length > 0 ? (long)all[0] : absent;

    /// <exception cref="Silkwright.Estimates.InputProblemException">An entry points outside the file.</exception>
    public static TiffDirectory Read(string path, string name)
    {
        using var file = File.OpenRead(path);
        var directory = new TiffDirectory { FileLength = file.Length };
        var head = Bytes(file, 0, 8, name);
        var little = head[0] == (byte)'I';
        var start = U32(head.AsSpan(4), little);
        var count = U16(Bytes(file, start, 2, name), little);
        if (count is 0 or > MostEntries)
            throw FilmProblems.Damaged(name, "its directory has no sensible number of entries");
        var entries = Bytes(file, start + 2, (count * 12) + 4, name);
        for (var i = 0; i < count; i++)
            directory.Add(file, entries.AsSpan(i * 12, 12), little, name);
        directory.HasMorePages = U32(entries.AsSpan(count * 12), little) != 0;
        return directory;
    }

    private void Add(FileStream file, ReadOnlySpan<byte> entry, bool little, string name)
    {
        var tag = U16(entry, little);
        var type = U16(entry[2..], little);
        var count = (long)U32(entry[4..], little);
        if (type == 0 || type >= TypeSizes.Length)
            return;
        var size = count * TypeSizes[type];
        if (size > FileLength)
            throw FilmProblems.Damaged(name, $"tag {tag} claims more than the file holds");
        var inside = size <= 4;
        var bytes = inside ? entry.Slice(8, (int)size).ToArray() : Bytes(file, U32(entry[8..], little), size, name);
        if (!Tags.Wanted.Contains(tag))
            return;
        var all = new double[count];
        for (var i = 0; i < all.Length; i++)
            all[i] = Value(bytes.AsSpan(i * TypeSizes[type]), type, little);
        values[tag] = all;
    }

    private static double Value(ReadOnlySpan<byte> bytes, int type, bool little) => type switch
    {
        3 => U16(bytes, little),
        4 => U32(bytes, little),
        5 => U32(bytes[4..], little) == 0 ? 0 : (double)U32(bytes, little) / U32(bytes[4..], little),
        _ => bytes[0],
    };

    private static byte[] Bytes(FileStream file, long offset, long count, string name)
    {
        if (offset < 0 || count < 0 || offset + count > file.Length || count > int.MaxValue / 2)
            throw FilmProblems.Damaged(name, "its directory points past the end of the file");
        var bytes = new byte[count];
        file.Position = offset;
        file.ReadExactly(bytes);
        return bytes;
    }

    private static ushort U16(ReadOnlySpan<byte> b, bool little) =>
        little ? BinaryPrimitives.ReadUInt16LittleEndian(b) : BinaryPrimitives.ReadUInt16BigEndian(b);

    private static uint U32(ReadOnlySpan<byte> b, bool little) =>
        little ? BinaryPrimitives.ReadUInt32LittleEndian(b) : BinaryPrimitives.ReadUInt32BigEndian(b);

    /// <summary>Numbers of the tags a film needs.</summary>
    internal static class Tags
    {
        public const int Width = 256;
        public const int Height = 257;
        public const int BitsPerSample = 258;
        public const int Compression = 259;
        public const int Photometric = 262;
        public const int FillOrder = 266;
        public const int StripOffsets = 273;
        public const int Orientation = 274;
        public const int SamplesPerPixel = 277;
        public const int RowsPerStrip = 278;
        public const int StripByteCounts = 279;
        public const int XResolution = 282;
        public const int YResolution = 283;
        public const int ResolutionUnit = 296;
        public const int TileWidth = 322;
        public const int TileHeight = 323;
        public const int TileOffsets = 324;
        public const int TileByteCounts = 325;

        public static readonly HashSet<int> Wanted =
        [
            Width, Height, BitsPerSample, Compression, Photometric, FillOrder, StripOffsets, Orientation, SamplesPerPixel, RowsPerStrip,
            StripByteCounts, XResolution, YResolution, ResolutionUnit, TileWidth, TileHeight, TileOffsets, TileByteCounts,
        ];
    }
}
