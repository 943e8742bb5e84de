using BitMiracle.LibTiff.Classic;
using Silkwright.Film.Measuring;
using Tags = Silkwright.Film.Readers.TiffDirectory.Tags;

namespace Silkwright.Film.Readers;

/// <summary>A film in a TIFF file, read a row at a time (a row of tiles at a time where it is tiled).</summary>
internal sealed class TiffFilm : IFilmSource
{
    private readonly string path;
    private readonly string name;
    private readonly TiffLayout layout;
    private readonly bool clearPrints;

    static TiffFilm() => QuietTiffErrors.Install();

    private TiffFilm(string path, TiffLayout layout, FilmHeader header, FilmPolarity polarity)
    {
        this.path = path;
        this.layout = layout;
        name = Path.GetFileName(path);
        Header = header;
        clearPrints = polarity == FilmPolarity.Negative;
    }

    public FilmHeader Header { get; }

    /// <exception cref="Silkwright.Estimates.InputProblemException">Damaged, too large or of a kind that is not read.</exception>
    public static TiffFilm Open(string path, FilmOptions options)
    {
        var name = Path.GetFileName(path);
        var directory = TiffDirectory.Read(path, name);
        var layout = TiffLayout.From(directory, name);
        var remarks = new List<string>();
        if (layout.Bits == 8)
            remarks.Add(RowPacking.ThresholdRemark);
        if (directory.HasMorePages)
            remarks.Add("The file has more than one page; the first was read.");
        var turned = directory.Whole(Tags.Orientation, 1);
        if (turned != 1)
            remarks.Add($"The file asks to be shown turned or mirrored (orientation {turned}); it was read as stored.");
        var dpi = FilmProblems.Dpi(name, options.Dpi, FileDpi(directory));
        return new TiffFilm(path, layout, new FilmHeader(Path.GetFileName(path), layout.Width, layout.Height, dpi, remarks), options.Polarity);
    }

    public int RowsTogether => layout.Plain ? 1 : layout.PieceRows;

    public void ReadRows(int first, int count, RowSink sink, CancellationToken cancel) => Guarded(() =>
    {
        if (layout.Plain)
            ReadPlain(first, count, sink, cancel);
        else if (layout.GroupFour)
            FillRows(first, count, sink, cancel);
        else
            Decode(first, count, sink, cancel);
    });

    public void ReadRuns(int first, int count, RunSink sink, CancellationToken cancel)
    {
        if (layout.GroupFour)
            Guarded(() => DecodeRuns(first, count, sink, cancel));
        else
            RowRuns.Read(this, first, count, sink, cancel);
    }

    private void Guarded(Action read)
    {
        try
        {
            read();
        }
        catch (Exception failure) when (failure is IndexOutOfRangeException or ArgumentException or NullReferenceException or IOException
            or OverflowException or FormatException or NotSupportedException or NotImplementedException or InvalidOperationException or DivideByZeroException or InvalidCastException or OutOfMemoryException)
        {
            // The TIFF library meets damaged data with whatever exception its arrays throw.
            if (failure is OperationCanceledException)
                throw;
            throw FilmProblems.Damaged(name, "its pixels cannot be decoded");
        }
    }

    public void Dispose()
    {
        // Each call of ReadRows opens and closes the file itself.
    }

    private static double? FileDpi(TiffDirectory d)
    {
        if (!d.Has(Tags.XResolution))
            return null;
        var unit = d.Whole(Tags.ResolutionUnit, 2);
        if (unit is not (2 or 3))
            return null;
        var (x, y) = (d.All(Tags.XResolution)[0], d.Has(Tags.YResolution) ? d.All(Tags.YResolution)[0] : d.All(Tags.XResolution)[0]);

        // A film whose pixels are not square has no one resolution; it has to be given.
        if (Math.Abs(x - y) > 0.01 * Math.Max(x, y))
            return null;
        return unit == 3 ? x * 2.54 : x;
    }

    private void ReadPlain(int first, int count, RowSink sink, CancellationToken cancel)
    {
        using var file = File.OpenRead(path);
        var bytes = new byte[layout.RowBytes];
        var packer = new Packer(layout, clearPrints);
        for (var y = first; y < first + count; y++)
        {
            if ((y & 255) == 0)
                cancel.ThrowIfCancellationRequested();
            file.Position = (long)layout.Offsets[y / layout.PieceRows] + ((long)(y % layout.PieceRows) * layout.RowBytes);
            file.ReadExactly(bytes);
            packer.Give(y, bytes, sink);
        }
    }

    private void FillRows(int first, int count, RowSink sink, CancellationToken cancel)
    {
        var row = new ulong[(layout.Width + 63) >> 6];
        DecodeRuns(
            first,
            count,
            (y, edges) =>
            {
                RowRuns.Fill(row, edges);
                sink(y, row);
            },
            cancel);
    }

    private void DecodeRuns(int first, int count, RunSink sink, CancellationToken cancel)
    {
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read, 1);
        var rows = new GroupFourRows(layout.Width);
        var turned = layout.MinIsWhite == clearPrints ? new int[layout.Width + 4] : null;
        for (var y = first - (first % layout.PieceRows); y < first + count; y++)
        {
            if ((y & 255) == 0)
                cancel.ThrowIfCancellationRequested();
            if (y % layout.PieceRows == 0)
                rows.Start(file, (long)layout.Offsets[y / layout.PieceRows], (long)layout.Counts[y / layout.PieceRows]);
            if (!rows.TryNext(out var edges))
                throw FilmProblems.Damaged(name, $"row {y + 1} of {layout.Height} cannot be decoded");
            if (y >= first)
                sink(y, turned is null ? edges : RowRuns.Between(edges, turned, layout.Width));
        }
    }

    private void Decode(int first, int count, RowSink sink, CancellationToken cancel)
    {
        using var tiff = Tiff.Open(path, "r") ?? throw FilmProblems.Damaged(name, "its directory cannot be read");
        var packer = new Packer(layout, clearPrints);
        if (layout.Tiled)
            DecodeTiles(tiff, first, count, packer, sink, cancel);
        else
            DecodeStrips(tiff, first, count, packer, sink, cancel);
    }

    private void DecodeStrips(Tiff tiff, int first, int count, Packer packer, RowSink sink, CancellationToken cancel)
    {
        var bytes = new byte[Math.Max(tiff.ScanlineSize(), layout.RowBytes)];
        var start = first - (first % layout.PieceRows);
        for (var y = start; y < first + count; y++)
        {
            if ((y & 63) == 0)
                cancel.ThrowIfCancellationRequested();
            QuietTiffErrors.Forget();
            if (!tiff.ReadScanline(bytes, y) || QuietTiffErrors.Last is not null)
                throw FilmProblems.Damaged(name, $"row {y + 1} of {layout.Height} cannot be decoded");
            if (y >= first)
                packer.Give(y, bytes.AsSpan(0, layout.RowBytes), sink);
        }
    }

    private void DecodeTiles(Tiff tiff, int first, int count, Packer packer, RowSink sink, CancellationToken cancel)
    {
        var tile = new byte[tiff.TileSize()];
        var tileBytes = layout.PieceWidth * layout.Bits / 8;
        var across = (layout.Width + layout.PieceWidth - 1) / layout.PieceWidth;
        var band = new byte[across * tileBytes * layout.PieceRows];
        for (var top = first - (first % layout.PieceRows); top < first + count; top += layout.PieceRows)
        {
            cancel.ThrowIfCancellationRequested();
            for (var i = 0; i < across; i++)
            {
                QuietTiffErrors.Forget();
                var number = (top / layout.PieceRows * across) + i;
                if (tiff.ReadEncodedTile(number, tile, 0, tile.Length) < 0 || QuietTiffErrors.Last is not null)
                    throw FilmProblems.Damaged(name, $"tile {number + 1} cannot be decoded");
                for (var r = 0; r < layout.PieceRows; r++)
                    Array.Copy(tile, r * tileBytes, band, (((r * across) + i) * tileBytes), tileBytes);
            }

            var end = Math.Min(first + count, top + layout.PieceRows);
            for (var y = Math.Max(first, top); y < end; y++)
                packer.Give(y, band.AsSpan((y - top) * across * tileBytes, layout.RowBytes), sink);
        }
    }

    /// <summary>Turns decoded rows into image bits.</summary>
    private sealed class Packer(TiffLayout layout, bool clearPrints)
    {
        private readonly ulong[] row = new ulong[(layout.Width + 63) >> 6];
        private readonly ulong lastMask = (layout.Width & 63) == 0 ? ulong.MaxValue : ~(ulong.MaxValue >> (layout.Width & 63));

        public void Give(int y, ReadOnlySpan<byte> bytes, RowSink sink)
        {
            if (layout.Bits == 1)
                RowPacking.Bits(bytes, row, layout.MinIsWhite == clearPrints, lastMask);
            else
                RowPacking.Greys(bytes[..layout.Width], row, layout.MinIsWhite != clearPrints, lastMask);
            sink(y, row);
        }
    }
}
