using Silkwright.Film.Measuring;

namespace Silkwright.Film.Readers;

/// <summary>From rows to runs and back.</summary>
internal static class RowRuns
{
    /// <summary>Gives a film's rows as runs by reading them as bits.</summary>
    public static void Read(IFilmSource film, int first, int count, RunSink sink, CancellationToken cancel)
    {
        var width = film.Header.WidthPx;
        var edges = new int[width + 2];
        film.ReadRows(first, count, (y, row) => sink(y, edges.AsSpan(0, BitRow.Edges(row, width, edges))), cancel);
    }

    /// <summary>Writes a whole row from its runs.</summary>
    public static void Fill(Span<ulong> row, ReadOnlySpan<int> edges)
    {
        row.Clear();
        for (var i = 0; i < edges.Length; i += 2)
            BitRow.Set(row, edges[i], edges[i + 1]);
    }

    /// <summary>The runs between runs: the same edges, with the row's own ends added and empty runs dropped.</summary>
    /// <param name="edges">Starts and ends in turn.</param>
    /// <param name="into">Room for two more.</param>
    /// <param name="width">[px]</param>
    public static ReadOnlySpan<int> Between(ReadOnlySpan<int> edges, int[] into, int width)
    {
        into[0] = 0;
        edges.CopyTo(into.AsSpan(1));
        into[edges.Length + 1] = width;
        var (start, end) = (0, edges.Length + 2);
        if (into[1] == 0 && edges.Length > 0)
            start = 2;
        if (end > start && into[end - 2] == width)
            end -= 2;
        return into.AsSpan(start, end - start);
    }
}
