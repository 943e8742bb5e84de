using Silkwright.Artwork;

namespace Silkwright.Film.Measuring.Layout;

/// <summary>Finds where a film prints, coarsely, and its register marks. docs/engines/film.md, "Films of one job".</summary>
internal static class LayoutFinder
{
    /// <summary>Side of a kept cell. [mm]</summary>
    private const double LeastCellMm = 2;

    private const int MostCells = 128;

    private const int MostMarks = 24;

    /// <summary>Marks lie in the outer fifth of what prints. Common practice, no source.</summary>
    private const double Rim = 0.2;

    /// <summary>Groups of cells with more pixels than this share of the square about them are no line work. Cells are coarse: half of what a mark may fill more.</summary>
    private const double MostFilled = 0.5;

    /// <summary>Longest side of what may hold a mark. [mm] The largest mark and a cell on either side.</summary>
    private const double MostMm = 22;

    /// <param name="bits">The film.</param>
    /// <param name="crosses">Its components that are as large and as empty as a mark.</param>
    /// <param name="dpi">[1/in]</param>
    /// <param name="cancel">Stops the work.</param>
    public static FilmLayout Of(FilmBitmap bits, IReadOnlyList<Blob> crosses, double dpi, CancellationToken cancel)
    {
        var grid = new LayoutGrid(bits, dpi, cancel);
        var (cell, times) = (grid.CellMm, 1);
        while (cell < LeastCellMm || Math.Max(grid.Across, grid.Down) > MostCells * times)
            (cell, times) = (cell * 2, times * 2);
        var coverage = Coverage(grid, times);
        if (Box(CellGroups.Of(grid)) is not { } image)
            return Layout([], null, null);
        var marks = ConnectedMarks.TakeOut(bits, crosses.Where(c => IsInRim(c, image, grid)), grid, MostMarks, dpi, cancel);
        var rest = new List<CellGroup>();
        foreach (var group in CellGroups.Of(grid))
        {
            cancel.ThrowIfCancellationRequested();
            var mark = marks.Count < MostMarks && MayBeMark(group, image, grid)
                ? MarkShape.In(bits, grid.Left(group.Left), grid.Top(group.Top), grid.Left(group.Right), grid.Top(group.Bottom), dpi)
                : null;
            if (mark is null)
                rest.Add(group);
            else
                marks.Add(mark);
        }

        return Layout(marks, image, Box(rest));

        FilmLayout Layout(IReadOnlyList<RegisterMark> marks, CellGroup? image, CellGroup? artwork) => new()
        {
            CellMm = cell,
            Across = (grid.Across + times - 1) / times,
            Down = (grid.Down + times - 1) / times,
            Coverage = coverage,
            Image = Millimetres(image, grid, dpi),
            Artwork = Millimetres(artwork, grid, dpi),
            Marks = marks,
        };
    }

    private static bool IsInRim(in Blob component, CellGroup image, LayoutGrid grid)
    {
        var (left, top, right, bottom) = (grid.Left(image.Left), grid.Top(image.Top), grid.Left(image.Right), grid.Top(image.Bottom));
        return Math.Min(component.Left - left, right - component.Right) <= Rim * (right - left)
            || Math.Min(component.Top - top, bottom - component.Bottom - 1) <= Rim * (bottom - top);
    }

    private static bool MayBeMark(CellGroup group, CellGroup image, LayoutGrid grid)
    {
        var (width, height) = (group.Right - group.Left, group.Bottom - group.Top);
        if (width * grid.CellMm > MostMm || height * grid.CellMm > MostMm || group.Pixels > MostFilled * grid.PixelsBetween(group.Left, group.Right) * grid.PixelsBetween(group.Top, group.Bottom))
            return false;
        var (across, down) = (image.Right - image.Left, image.Bottom - image.Top);
        var beside = Math.Min(group.Left - image.Left, image.Right - group.Right);
        var above = Math.Min(group.Top - image.Top, image.Bottom - group.Bottom);
        return beside <= Rim * across || above <= Rim * down;
    }

    private static CellGroup? Box(IReadOnlyList<CellGroup> groups) => groups.Count == 0 ? null : new CellGroup(
        groups.Min(group => group.Left), groups.Min(group => group.Top), groups.Max(group => group.Right), groups.Max(group => group.Bottom), groups.Sum(group => group.Pixels));

    private static FilmBox? Millimetres(CellGroup? box, LayoutGrid grid, double dpi)
    {
        if (box is not { } cells)
            return null;
        var mm = 25.4 / dpi;
        var (left, top) = (grid.Left(cells.Left), grid.Top(cells.Top));
        return new FilmBox(left * mm, top * mm, (grid.Left(cells.Right) - left) * mm, (grid.Top(cells.Bottom) - top) * mm);
    }

    private static byte[] Coverage(LayoutGrid grid, int times)
    {
        var (across, down) = ((grid.Across + times - 1) / times, (grid.Down + times - 1) / times);
        var sums = new double[across * down];
        for (var y = 0; y < grid.Down; y++)
        {
            for (var x = 0; x < grid.Across; x++)
                sums[(y / times * across) + (x / times)] += grid[x, y];
        }

        return [.. sums.Select((sum, i) => (byte)Math.Round(255 * sum / (Pixels(i % across) * Pixels(i / across))))];

        double Pixels(int cell) => grid.PixelsBetween(cell * times, (cell + 1) * times);
    }
}
