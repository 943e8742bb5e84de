namespace Silkwright.Film.Measuring.Layout;

/// <summary>Cells that print and touch each other, by their corners too.</summary>
internal static class CellGroups
{
    /// <summary>What encloses each group, ends one past the last cell.</summary>
    public static IReadOnlyList<CellGroup> Of(LayoutGrid grid)
    {
        var seen = new bool[grid.Across * grid.Down];
        var groups = new List<CellGroup>();
        var waiting = new Stack<(int X, int Y)>();
        for (var y = 0; y < grid.Down; y++)
        {
            for (var x = 0; x < grid.Across; x++)
            {
                if (grid[x, y] == 0 || seen[(y * grid.Across) + x])
                    continue;
                seen[(y * grid.Across) + x] = true;
                waiting.Push((x, y));
                groups.Add(Collect(grid, seen, waiting));
            }
        }

        return groups;
    }

    private static CellGroup Collect(LayoutGrid grid, bool[] seen, Stack<(int X, int Y)> waiting)
    {
        var group = new CellGroup(int.MaxValue, int.MaxValue, 0, 0, 0);
        while (waiting.TryPop(out var cell))
        {
            group = new CellGroup(
                Math.Min(group.Left, cell.X), Math.Min(group.Top, cell.Y),
                Math.Max(group.Right, cell.X + 1), Math.Max(group.Bottom, cell.Y + 1),
                group.Pixels + grid[cell.X, cell.Y]);
            for (var y = Math.Max(0, cell.Y - 1); y <= Math.Min(grid.Down - 1, cell.Y + 1); y++)
            {
                for (var x = Math.Max(0, cell.X - 1); x <= Math.Min(grid.Across - 1, cell.X + 1); x++)
                {
                    if (grid[x, y] == 0 || seen[(y * grid.Across) + x])
                        continue;
                    seen[(y * grid.Across) + x] = true;
                    waiting.Push((x, y));
                }
            }
        }

        return group;
    }
}
