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

    /// <summary>Writes what opening by a disc removes, at least in the marked cells and outside a mask, and 0 elsewhere.</summary>
    public void Fill(int diameter, TileMap? only, FilmBitmap? mask, FilmBitmap into)
    {
        into.Clear();
        Run(diameter, only, (kernel, disc, tile) => kernel.Residue(bits, gap, disc, tile, (y, removed) =>
        {
            if (PackedRows.IsAll(removed, 0))
                return;
            for (var i = 0; i < removed.Length; i++)
            {
                var shown = removed[i] == 0 || mask is null ? removed[i] : removed[i] & ~mask.Word(y, tile.Word + i);
                if (shown != 0)
                    into.Writable(y, tile.Word + i) = shown;
            }
        }));
    }

    private void Run(int diameter, TileMap? only, Action<DiscOpening, DigitalDisc, OpeningTile> work)
    {
        var disc = new DigitalDisc(diameter);
        var tiles = cells.Openable(bits, gap, diameter, only).Tiles(DiscOpening.TileWords(diameter), DiscOpening.TileRows(diameter), join: 2);

        // No more at once than there are cores, or threads that wait for others would each bring a kernel of their own.
        var cores = new ParallelOptions { CancellationToken = cancel, MaxDegreeOfParallelism = Environment.ProcessorCount };
        _ = Parallel.ForEach(Partitioner.Create(tiles, loadBalance: true), cores, tile =>
        {
            if (!kernels.TryTake(out var kernel))
                kernel = new DiscOpening();
            work(kernel, disc, tile);
            kernels.Add(kernel);
        });
    }
}
