using System.Collections.Concurrent;
using Silkwright.Film.Readers;

namespace Silkwright.Film.Measuring;

/// <summary>Runs openings over a film's tiles on all cores.</summary>
internal sealed class OpeningTiles(PackedBitmap bits, bool gap, CancellationToken cancel)
{
    private readonly ConcurrentBag<DiscOpening> kernels = [];

    /// <summary>Area that opening by a disc removes. [px]</summary>
    public long Area(int diameter)
    {
        var total = 0L;
        Run(diameter, null, (kernel, disc, word, row) =>
        {
            var area = 0L;
            kernel.Residue(bits, gap, disc, word, row, (_, removed) => area += BitRow.Count(removed));
            _ = Interlocked.Add(ref total, area);
        });
        return total;
    }

    /// <summary>Writes what opening by a disc removes, in the marked tiles and outside a mask, and 0 everywhere else.</summary>
    public void Fill(int diameter, TileMap? only, PackedBitmap? mask, PackedBitmap into)
    {
        into.All.Clear();
        Run(diameter, only, (kernel, disc, word, row) => kernel.Residue(bits, gap, disc, word, row, (y, removed) =>
        {
            var to = into.Row(y).Slice(word, removed.Length);
            removed.CopyTo(to);
            if (mask is null)
                return;
            var hidden = mask.Row(y).Slice(word, removed.Length);
            for (var i = 0; i < to.Length; i++)
                to[i] &= ~hidden[i];
        }));
    }

    private void Run(int diameter, TileMap? only, Action<DiscOpening, DigitalDisc, int, int> tile)
    {
        var disc = new DigitalDisc(diameter);
        var (words, rows) = (DiscOpening.TileWords(diameter), DiscOpening.TileRows(diameter));
        var tiles = new List<(int Word, int Row)>();
        for (var row = 0; row < bits.Height; row += rows)
        {
            for (var word = 0; word < bits.Stride; word += words)
            {
                if (only is null || only.Any(word, words, row, rows))
                    tiles.Add((word, row));
            }
        }

        _ = Parallel.ForEach(Partitioner.Create(tiles, loadBalance: true), new ParallelOptions { CancellationToken = cancel }, at =>
        {
            if (!kernels.TryTake(out var kernel))
                kernel = new DiscOpening();
            tile(kernel, disc, at.Word, at.Row);
            kernels.Add(kernel);
        });
    }
}
