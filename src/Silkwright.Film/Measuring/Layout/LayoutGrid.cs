namespace Silkwright.Film.Measuring.Layout;

/// <summary>How many pixels of each square cell print.</summary>
internal sealed class LayoutGrid
{
    /// <summary>Side of a cell. [mm] A mark stands clear of everything else by as much.</summary>
    private const double LeastCellMm = 1;

    private const int MostCells = 1024;

    private readonly FilmBitmap bits;
    private readonly double cellPx;
    private readonly int[] counts;

    public LayoutGrid(FilmBitmap bits, double dpi, CancellationToken cancel)
    {
        this.bits = bits;
        CellMm = LeastCellMm;
        while (Math.Max(bits.Width, bits.Height) * 25.4 / dpi / CellMm > MostCells)
            CellMm *= 2;
        cellPx = CellMm * dpi / 25.4;
        (Across, Down) = ((int)Math.Ceiling(bits.Width / cellPx), (int)Math.Ceiling(bits.Height / cellPx));
        counts = new int[Across * Down];
        _ = Parallel.For(
            0,
            Down,
            new ParallelOptions { CancellationToken = cancel, MaxDegreeOfParallelism = Environment.ProcessorCount },
            () => new ulong[FilmBitmap.CellRows * bits.Stride],
            (cell, _, rows) => CountRow(cell, rows),
            _ => { });
    }

    /// <summary>[mm]</summary>
    public double CellMm { get; }

    public int Across { get; }

    public int Down { get; }

    /// <summary>Pixels of cells from one up to but not another, counted as if the film went on.</summary>
    public double PixelsBetween(int from, int to) => Math.Round(to * cellPx) - Math.Round(from * cellPx);

    /// <summary>Image pixels of a cell.</summary>
    public int this[int x, int y] => counts[(y * Across) + x];

    /// <summary>First column of a cell, or one past the last of the cell before. [px]</summary>
    public int Left(int cell) => Math.Min(bits.Width, (int)Math.Round(cell * cellPx));

    /// <summary>First row of a cell, or one past the last of the cell above. [px]</summary>
    public int Top(int cell) => Math.Min(bits.Height, (int)Math.Round(cell * cellPx));

    /// <summary>Takes the image's pixels in a rectangle out of the counts.</summary>
    public void TakeOut(int left, int right, int top, int bottom)
    {
        for (var y = Cell(top); y < Down && Top(y) < bottom; y++)
        {
            for (var x = Cell(left); x < Across && Left(x) < right; x++)
            {
                for (var row = Math.Max(top, Top(y)); row < Math.Min(bottom, Top(y + 1)); row++)
                    counts[(y * Across) + x] -= bits.Count(row, Math.Max(left, Left(x)), Math.Min(right, Left(x + 1)));
            }
        }

        int Cell(int px) => Math.Max(0, (int)(px / cellPx) - 1);
    }

    private ulong[] CountRow(int cell, ulong[] rows)
    {
        var into = counts.AsSpan(cell * Across, Across);
        for (var y = Top(cell); y < Top(cell + 1);)
        {
            var last = Math.Min(Top(cell + 1), ((y / FilmBitmap.CellRows) + 1) * FilmBitmap.CellRows);
            bits.ReadCells(y / FilmBitmap.CellRows, rows);
            for (; y < last; y++)
            {
                var row = rows.AsSpan(y % FilmBitmap.CellRows * bits.Stride, bits.Stride);
                for (var x = 0; x < into.Length; x++)
                    into[x] += BitRow.Count(row, Left(x), Left(x + 1));
            }
        }

        return rows;
    }
}
