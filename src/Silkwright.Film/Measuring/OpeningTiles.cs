using System.Collections.Concurrent;

namespace Silkwright.Film.Measuring;

/// <summary>Runs openings over a film's tiles on all cores, only where something can be removed.</summary>
internal sealed class OpeningTiles(FilmBitmap bits, FilmCells cells, bool gap, CancellationToken cancel)
{
    private readonly ConcurrentBag<DiscOpening> kernels = [];

    /// <summary>Area that opening by a disc removes. [px]</summary>
    public long Area(int diameter)
    {
        var total = 0L;
        Run(diameter, null, (kernel, disc, tile) =>
        {
            var area = 0L;
            kernel.Residue(bits, gap, disc, tile, (_, removed) => area += BitRow.Count(removed));
            _ = Interlocked.Add(ref total, area);
        });
        return total;
    }

    /// <summary>Writes what opening by a disc removes outside a mask into a blank bitmap of the film's size.</summary>
    public void Fill(int diameter, FilmBitmap? mask, FilmBitmap into) =>
        Run(diameter, null, (kernel, disc, tile) => Write(kernel, disc, tile, mask, into, 0, null));

    /// <summary>The same for some tiles, on this thread, into a blank bitmap of fewer rows.</summary>
    /// <param name="disc">The disc.</param>
    /// <param name="work">The tiles.</param>
    /// <param name="mask">What is left out; none: nothing.</param>
    /// <param name="into">As wide as the film.</param>
    /// <param name="top">The film's row that is its first.</param>
    /// <param name="touched">Gets a mark in every cell that something is removed from.</param>
    public void Fill(DigitalDisc disc, IEnumerable<OpeningTile> work, FilmBitmap? mask, FilmBitmap into, int top, TileMap? touched)
    {
        var kernel = Kernel();
        foreach (var tile in work)
        {
            cancel.ThrowIfCancellationRequested();
            Write(kernel, disc, tile, mask, into, top, touched);
        }

        kernels.Add(kernel);
    }

    /// <summary>The tiles in which opening by a disc can remove anything, in blocks of rows from the top down.</summary>
    /// <param name="diameter">The disc's. [px]</param>
    /// <param name="only">Cells that are looked at; none: all.</param>
    public List<OpeningTile> Tiles(int diameter, TileMap? only) =>
        cells.Openable(bits, gap, diameter, only).Tiles(DiscOpening.TileWords(diameter), DiscOpening.TileRows(diameter), join: 2);

    /// <summary>A word of what is opened: the image, or the gap.</summary>
    public ulong Opened(int y, int word) => gap ? ~bits.Word(y, word) & (word == bits.Stride - 1 ? bits.LastMask : ulong.MaxValue) : bits.Word(y, word);

    private void Write(DiscOpening kernel, DigitalDisc disc, OpeningTile tile, FilmBitmap? mask, FilmBitmap into, int top, TileMap? touched) =>
        kernel.Residue(bits, gap, disc, tile, (y, removed) =>
        {
            if (PackedRows.IsAll(removed, 0))
                return;
            for (var i = 0; i < removed.Length; i++)
            {
                var shown = removed[i] == 0 || mask is null ? removed[i] : removed[i] & ~mask.Word(y, tile.Word + i);
                if (shown == 0)
                    continue;
                into.Writable(y - top, tile.Word + i) = shown;
                touched?.Mark(tile.Word + i, y);
            }
        });

    private void Run(int diameter, TileMap? only, Action<DiscOpening, DigitalDisc, OpeningTile> work)
    {
        var disc = new DigitalDisc(diameter);

        // No more at once than there are cores, or threads that wait for others would each bring a kernel of their own.
        var cores = new ParallelOptions { CancellationToken = cancel, MaxDegreeOfParallelism = Environment.ProcessorCount };
        _ = Parallel.ForEach(Partitioner.Create(Tiles(diameter, only), loadBalance: true), cores, tile =>
        {
            var kernel = Kernel();
            work(kernel, disc, tile);
            kernels.Add(kernel);
        });
    }

    private DiscOpening Kernel() => kernels.TryTake(out var kernel) ? kernel : new DiscOpening();
}
