using Tags = Silkwright.Film.Readers.TiffDirectory.Tags;

namespace Silkwright.Film.Readers;

/// <summary>How a TIFF keeps its pixels, checked: nothing in it points outside the file.</summary>
internal sealed record TiffLayout
{
    private const long LargestTileBand = 128L << 20;

    public required int Width { get; init; }

    public required int Height { get; init; }

    public required int Bits { get; init; }

    public required int Compression { get; init; }

    public required bool MinIsWhite { get; init; }

    public required bool Tiled { get; init; }

    /// <summary>Rows in a strip or height of a tile.</summary>
    public required int PieceRows { get; init; }

    public required int PieceWidth { get; init; }

    public required IReadOnlyList<double> Offsets { get; init; }

    /// <summary>Bytes of each strip or tile.</summary>
    public required IReadOnlyList<double> Counts { get; init; }

    /// <summary>Strips of CCITT group 4, to be decoded straight into runs.</summary>
    public bool GroupFour => Compression == 4 && !Tiled && FillsFromHigh;

    /// <summary>The first pixel is in a byte's highest bit.</summary>
    public required bool FillsFromHigh { get; init; }

    /// <summary>Rows are plain bytes in the file, to be read without a decoder.</summary>
    public bool Plain => Compression == 1 && !Tiled && FillsFromHigh;

    public int RowBytes => ((Width * Bits) + 7) / 8;

    /// <exception cref="Silkwright.Estimates.InputProblemException">Damaged, too large or of a kind that is not read.</exception>
    public static TiffLayout From(TiffDirectory d, string name)
    {
        var (width, height) = (d.Whole(Tags.Width, 0), d.Whole(Tags.Height, 0));
        FilmProblems.CheckSize(name, width, height);
        var bits = d.Whole(Tags.BitsPerSample, 1);
        if (bits is not (1 or 8))
            throw FilmProblems.Unsupported(name, $"{bits} bits a sample");
        var samples = d.Whole(Tags.SamplesPerPixel, 1);
        if (samples != 1)
            throw FilmProblems.Unsupported(name, $"{samples} samples a pixel, which is a colour picture and not a separation");
        var compression = (int)d.Whole(Tags.Compression, 1);
        if (compression is not (1 or 3 or 4 or 5 or 8 or 32773 or 32946) || (compression is 3 or 4 && bits != 1))
            throw FilmProblems.Unsupported(name, $"compression scheme {compression} with {bits} bits");
        var photometric = d.Whole(Tags.Photometric, 0);
        if (photometric is not (0 or 1))
            throw FilmProblems.Unsupported(name, $"photometric interpretation {photometric}");
        var tiled = d.Has(Tags.TileOffsets);
        var rows = tiled ? d.Whole(Tags.TileHeight, 0) : Math.Min(d.Whole(Tags.RowsPerStrip, height), height);
        var across = tiled ? d.Whole(Tags.TileWidth, 0) : width;
        if (rows < 1 || across < 1 || (tiled && (across % 16 != 0 || rows % 16 != 0)))
            throw FilmProblems.Damaged(name, "its strips or tiles have no sensible size");
        if (tiled && (rows > 1 << 16 || across > 1 << 18 || rows * ((Math.Max(width, across) * bits / 8) + 8) > LargestTileBand))
            throw FilmProblems.Unsupported(name, $"tiles of {across} x {rows} px");
        var pieces = ((height + rows - 1) / rows) * ((width + across - 1) / across);
        var offsets = d.All(tiled ? Tags.TileOffsets : Tags.StripOffsets);
        var counts = d.All(tiled ? Tags.TileByteCounts : Tags.StripByteCounts);
        var rowBytes = ((width * bits) + 7) / 8;
        CheckPieces(d, name, pieces, offsets, counts, compression == 1 && !tiled ? rowBytes * rows : 0, height, rowBytes);
        return new TiffLayout
        {
            Width = (int)width,
            Height = (int)height,
            Bits = (int)bits,
            Compression = compression,
            MinIsWhite = photometric == 0,
            Tiled = tiled,
            PieceRows = (int)rows,
            PieceWidth = (int)across,
            Offsets = offsets,
            Counts = counts,
            FillsFromHigh = d.Whole(Tags.FillOrder, 1) == 1,
        };
    }

    private static void CheckPieces(
        TiffDirectory d,
        string name,
        long pieces,
        IReadOnlyList<double> offsets,
        IReadOnlyList<double> counts,
        long plainBytes,
        long height,
        long rowBytes)
    {
        if (offsets.Count < pieces || counts.Count < pieces)
            throw FilmProblems.Damaged(name, $"it needs {pieces} strips or tiles and lists {Math.Min(offsets.Count, counts.Count)}");
        var left = height * rowBytes;
        for (var i = 0; i < pieces; i++)
        {
            var bytes = plainBytes > 0 ? Math.Min(plainBytes, left) : counts[i];
            left -= plainBytes;
            if (bytes < 1 || offsets[i] < 8 || offsets[i] + bytes > d.FileLength)
                throw FilmProblems.Damaged(name, $"strip or tile {i + 1} of {pieces} lies past the end of the file");
        }
    }
}
