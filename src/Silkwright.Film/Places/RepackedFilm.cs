using System.IO.Compression;
using System.Runtime.InteropServices;
using Silkwright.Film.Readers;

namespace Silkwright.Film.Places;

/// <summary>A film's rows packed again in short strips, for a film that can only be read from its top: reading may start at every strip.</summary>
/// <remarks>Each strip is packed bits under zlib (RFC 1950); after the last stand the places at which they begin.</remarks>
internal sealed class RepackedFilm : IFilmSource
{
    /// <summary>Rows of a strip.</summary>
    public const int StripRows = 128;

    private readonly string path;
    private readonly long[] places;

    /// <param name="path">As <see cref="Writer"/> wrote it.</param>
    /// <param name="header">Of the film it was made from.</param>
    public RepackedFilm(string path, FilmHeader header)
    {
        (this.path, Header) = (path, header);
        places = new long[Strips(header) + 1];
        using var file = File.OpenRead(path);
        var index = MemoryMarshal.AsBytes(places.AsSpan());
        file.Position = file.Length - index.Length;
        file.ReadExactly(index);
    }

    public FilmHeader Header { get; }

    public int RowsTogether => StripRows;

    public void ReadRows(int first, int count, RowSink sink, CancellationToken cancel)
    {
        using var file = File.OpenRead(path);
        var row = new ulong[(Header.WidthPx + 63) >> 6];
        for (var strip = first / StripRows; strip * StripRows < first + count; strip++)
        {
            cancel.ThrowIfCancellationRequested();
            file.Position = places[strip];
            using var rows = new ZLibStream(file, CompressionMode.Decompress, leaveOpen: true);
            for (var y = strip * StripRows; y < Math.Min(first + count, (strip + 1) * StripRows); y++)
            {
                rows.ReadExactly(MemoryMarshal.AsBytes(row.AsSpan()));
                if (y >= first)
                    sink(y, row);
            }
        }
    }

    public void Dispose()
    {
        // Each call of ReadRows opens and closes the file itself.
    }

    private static int Strips(FilmHeader header) => ((header.HeightPx - 1) / StripRows) + 1;

    /// <summary>Writes the rows as they come, from the first to the last.</summary>
    internal sealed class Writer(string path, FilmHeader header) : IDisposable
    {
        private readonly FileStream file = File.Create(path);
        private readonly List<long> places = [0];
        private ZLibStream? strip;

        public void Add(int y, ReadOnlySpan<ulong> row)
        {
            strip ??= new ZLibStream(file, CompressionLevel.Fastest, leaveOpen: true);
            strip.Write(MemoryMarshal.AsBytes(row));
            if ((y + 1) % StripRows != 0 && y + 1 != header.HeightPx)
                return;
            strip.Dispose();
            strip = null;
            places.Add(file.Position);
            if (y + 1 == header.HeightPx)
                file.Write(MemoryMarshal.AsBytes(CollectionsMarshal.AsSpan(places)));
        }

        public void Dispose()
        {
            strip?.Dispose();
            file.Dispose();
        }
    }
}
