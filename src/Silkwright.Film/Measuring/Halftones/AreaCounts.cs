namespace Silkwright.Film.Measuring.Halftones;

/// <summary>How many dots there are of each area: in order of size without a list of them all.</summary>
internal sealed class AreaCounts
{
    private int[] counts = new int[64];

    public int Count { get; private set; }

    public void Add(int area)
    {
        if (area >= counts.Length)
            Array.Resize(ref counts, Math.Max(area + 1, 2 * counts.Length));
        counts[area]++;
        Count++;
    }

    /// <summary>The area of one of them, the smallest being number 0. [px]</summary>
    public int At(int number)
    {
        var area = 0;
        for (var before = counts[0]; before <= number; before += counts[area])
            area++;
        return area;
    }
}
