namespace Silkwright.Film.Measuring;

/// <summary>Writes rows that follow each other into a film, a row of cells at a time, so that cells all alike never take memory.</summary>
/// <remarks>One instance serves one thread. Another may write the other rows of the same cells, but not the same rows.</remarks>
internal sealed class CellRowWriter(FilmBitmap film)
{
    private readonly ulong[] rows = new ulong[film.Stride * FilmBitmap.CellRows];
    private readonly ulong[] any = new ulong[film.Stride];
    private readonly ulong[] all = new ulong[film.Stride];
    private int first;
    private int count;

    /// <summary>Rows before this are in the film.</summary>
    public int Written => first;

    /// <summary>Where to write a row's words, every one of them; what comes before is put in the film once its cells are done.</summary>
    public Span<ulong> Row(int y)
    {
        if (count > 0 && (y != first + count || y % FilmBitmap.CellRows == 0))
            Flush();
        if (count == 0)
            first = y;
        return rows.AsSpan(count++ * film.Stride, film.Stride);
    }

    /// <summary>Puts in the film what is not there yet.</summary>
    public void Flush()
    {
        any.AsSpan().Clear();
        all.AsSpan().Fill(ulong.MaxValue);
        for (var i = 0; i < count; i++)
            PackedRows.Gather(rows.AsSpan(i * film.Stride, film.Stride), any, all);
        for (var word = 0; word < film.Stride; word++)
        {
            if (any[word] == 0)
                continue;
            if (all[word] == ulong.MaxValue && count == FilmBitmap.CellRows)
                film.Fill(word, first / FilmBitmap.CellRows);
            else
                film.Put(word, first, rows.AsSpan(word), film.Stride, count);
        }

        (first, count) = (first + count, 0);
    }
}
