using Silkwright.Artwork;

namespace Silkwright.Film.Measuring.Layout;

/// <summary>Register marks that are one component each: they may stand near artwork, as long as nothing else reaches into their boxes.</summary>
internal static class ConnectedMarks
{
    /// <summary>Nothing else is this near a mark's box. [mm] A quarter of what a mark of several components needs.</summary>
    private const double ClearMm = 0.25;

    /// <summary>Components that are looked at, the largest first: more are lettering.</summary>
    private const int MostTried = 96;

    /// <summary>Finds the marks and takes them out of the grid.</summary>
    /// <param name="bits">The film.</param>
    /// <param name="crosses">Components that are as large and as empty as a mark.</param>
    /// <param name="grid">What prints in each cell.</param>
    /// <param name="most">Most marks.</param>
    /// <param name="dpi">[1/in]</param>
    /// <param name="cancel">Stops the work.</param>
    public static List<RegisterMark> TakeOut(FilmBitmap bits, IEnumerable<Blob> crosses, LayoutGrid grid, int most, double dpi, CancellationToken cancel)
    {
        var marks = new List<RegisterMark>();
        var clear = (int)Math.Ceiling(ClearMm * dpi / 25.4);
        foreach (var cross in crosses.OrderByDescending(c => c.Width + c.Height).ThenBy(c => c.Top).ThenBy(c => c.Left).Take(MostTried))
        {
            cancel.ThrowIfCancellationRequested();
            if (marks.Count >= most || !IsAlone(bits, cross, clear) || MarkShape.In(bits, cross.Left, cross.Top, cross.Right, cross.Bottom + 1, dpi) is not { } mark)
                continue;
            marks.Add(mark);
            grid.TakeOut(cross.Left, cross.Right, cross.Top, cross.Bottom + 1);
        }

        return marks;
    }

    private static bool IsAlone(FilmBitmap bits, in Blob cross, int clear)
    {
        var (left, right) = (Math.Max(0, cross.Left - clear), Math.Min(bits.Width, cross.Right + clear));
        var pixels = 0L;
        for (var y = Math.Max(0, cross.Top - clear); y < Math.Min(bits.Height, cross.Bottom + 1 + clear) && pixels <= cross.Area; y++)
            pixels += bits.Count(y, left, right);
        return pixels == cross.Area;
    }
}
