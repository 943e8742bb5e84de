namespace Silkwright.Film.Measuring;

/// <summary>Joins the components that reach from one band of rows into the next.</summary>
internal static class ComponentSeams
{
    /// <summary>The components that touch a band's first or last row, whole.</summary>
    public static IEnumerable<Blob> Join(IReadOnlyList<BandComponents> bands)
    {
        var firstLabel = new int[bands.Count + 1];
        for (var b = 0; b < bands.Count; b++)
            firstLabel[b + 1] = firstLabel[b] + bands[b].LabelCount;
        var joined = new UnionFind(firstLabel[^1]);
        var open = new Dictionary<int, Blob>();
        for (var b = 0; b < bands.Count; b++)
        {
            foreach (var run in bands[b].FirstRow)
                open[firstLabel[b] + bands[b].Root(run.Label)] = bands[b][bands[b].Root(run.Label)];
            foreach (var run in bands[b].LastRow)
                open[firstLabel[b] + bands[b].Root(run.Label)] = bands[b][bands[b].Root(run.Label)];
            if (b > 0)
                JoinPair(bands[b - 1], firstLabel[b - 1], bands[b], firstLabel[b], joined);
        }

        var whole = new Dictionary<int, Blob>();
        foreach (var (label, blob) in open)
        {
            var root = joined.Root(label);
            if (whole.TryGetValue(root, out var sum))
                sum.Add(blob);
            else
                sum = blob;
            whole[root] = sum;
        }

        return whole.Values;
    }

    private static void JoinPair(BandComponents upper, int upperLabel, BandComponents lower, int lowerLabel, UnionFind joined)
    {
        var above = upper.LastRow;
        var k = 0;
        foreach (var run in lower.FirstRow)
        {
            while (k < above.Length && above[k].To < run.From)
                k++;
            for (var i = k; i < above.Length && above[i].From <= run.To; i++)
                joined.Join(upperLabel + upper.Root(above[i].Label), lowerLabel + lower.Root(run.Label));
        }
    }
}
