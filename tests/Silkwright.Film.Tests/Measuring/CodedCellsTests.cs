using Silkwright.Film.Measuring;

namespace Silkwright.Film.Tests.Measuring;

/// <summary>Cells kept as where their rows change, against the rows themselves.</summary>
public sealed class CodedCellsTests
{
    [Fact]
    public void Every_row_comes_back_alone_and_with_the_others()
    {
        var random = new Random(95);
        var cells = new CodedCells(4000);
        var kept = new List<(int Place, ulong[] Rows)>();
        for (var round = 0; round < 4000; round++)
        {
            var rows = Rows(random, round % 8);
            kept.Add((cells.Add(rows), rows));
        }

        var read = new ulong[FilmBitmap.CellRows];
        foreach (var (place, rows) in kept)
        {
            cells.Read(place, read);
            Assert.Equal(rows, read);
            for (var row = 0; row < rows.Length; row++)
                Assert.Equal(rows[row], cells.Row(place, row));
        }
    }

    [Fact]
    public void A_halftone_takes_less_than_half_of_its_pixels_memory_and_noise_no_more_than_its_pixels()
    {
        // 55 lines an inch at 2400 dpi and 22.5 degrees, dots of half the period across: plane geometry.
        var (u, v) = (Math.Cos(Math.PI / 8) * 55 / 2400, Math.Sin(Math.PI / 8) * 55 / 2400);
        var cells = new CodedCells(201);
        for (var cell = 0; cell < 200; cell++)
        {
            var rows = new ulong[FilmBitmap.CellRows];
            for (var y = 0; y < rows.Length; y++)
            {
                for (var x = 0; x < 64; x++)
                {
                    var (i, j) = ((u * (x + (64 * cell))) + (v * y), (u * y) - (v * (x + (64 * cell))));
                    var (di, dj) = (i - Math.Round(i), j - Math.Round(j));
                    if ((di * di) + (dj * dj) < 1 / 16.0)
                        rows[y] |= 1UL << (63 - x);
                }
            }

            _ = cells.Add(rows);
        }

        Assert.True(cells.Bytes < 200 * FilmBitmap.CellRows * sizeof(ulong) / 2.0, $"{cells.Bytes} bytes");
        var (before, random) = (cells.Bytes, new Random(96));
        _ = cells.Add([.. Enumerable.Range(0, FilmBitmap.CellRows).Select(_ => (ulong)random.NextInt64())]);
        Assert.Equal(FilmBitmap.CellRows * sizeof(ulong), cells.Bytes - before);
    }

    /// <summary>Cells of few and many changes, of rows alike, and all clear or all set at some of their rows.</summary>
    private static ulong[] Rows(Random random, int changes)
    {
        var rows = new ulong[FilmBitmap.CellRows];
        for (var row = 0; row < rows.Length; row++)
        {
            rows[row] = row > 0 && random.Next(3) == 0 ? rows[row - 1] : random.Next(9) == 0 ? ulong.MaxValue : 0;
            for (var k = random.Next(changes + 1); k > 0; k--)
                rows[row] ^= ulong.MaxValue >> random.Next(64);
        }

        return rows;
    }
}
