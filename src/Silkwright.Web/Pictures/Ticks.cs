namespace Silkwright.Web.Pictures;

/// <summary>Round numbers along an axis.</summary>
public static class Ticks
{
    /// <summary>At most <paramref name="most"/> steps of 1, 2 or 5 times a power of ten.</summary>
    public static IReadOnlyList<double> Between(double from, double to, int most)
    {
        if (to <= from)
            return [from];
        var rough = (to - from) / most;
        var power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        var step = power * (rough / power <= 1 ? 1 : rough / power <= 2 ? 2 : rough / power <= 5 ? 5 : 10);
        var first = (long)Math.Ceiling(from / step);
        var last = (long)Math.Floor((to / step) + 1e-9);
        return [.. Enumerable.Range(0, (int)(last - first + 1)).Select(i => (first + i) * step)];
    }

    /// <summary>Numbers 1, 1.5, 2, 3, 5 and 7 times powers of ten along a logarithmic axis, thinned to at most <paramref name="most"/>.</summary>
    public static IReadOnlyList<double> Log(double from, double to, int most)
    {
        foreach (double[] steps in new double[][] { [1, 1.5, 2, 3, 4, 5, 7], [1, 2, 3, 5], [1, 2, 5], [1, 3], [1] })
        {
            double[] all = [.. Enumerable.Range((int)Math.Floor(Math.Log10(from)), 14)
                .SelectMany(power => steps.Select(s => s * Math.Pow(10, power)))
                .Where(t => t >= from && t <= to)];
            if (all.Length <= most)
                return all;
        }

        return [from, to];
    }
}
