using Silkwright.Film.Readers;

namespace Silkwright.Film.Measuring;

/// <summary>Scans one band of rows for the components of image and gap at once.</summary>
internal sealed class ComponentBand
{
    private readonly PackedBitmap bits;
    private readonly int from;
    private readonly int to;

    public ComponentBand(PackedBitmap bits, int from, int to, SpeckMarks specks)
    {
        (this.bits, this.from, this.to) = (bits, from, to);
        ImageTally = new ComponentTally(specks);
        GapTally = new ComponentTally(specks);
        Image = new BandComponents(ImageTally.Close);
        Gap = new BandComponents(GapTally.Close);
    }

    public BandComponents Image { get; }

    public BandComponents Gap { get; }

    public ComponentTally ImageTally { get; }

    public ComponentTally GapTally { get; }

    public void Scan(CancellationToken cancel)
    {
        var edges = new int[bits.Width + 4];
        for (var y = from; y < to; y++)
        {
            if ((y & 255) == 0)
                cancel.ThrowIfCancellationRequested();
            var count = BitRow.Edges(bits.Row(y), bits.Width, edges.AsSpan(1));
            Image.AddRow(edges.AsSpan(1, count), y);
            Gap.AddRow(Between(edges, count, bits.Width), y);
        }
    }

    /// <summary>The gap's runs lie between the image's: the same edges, with the row's own ends added and empty runs dropped.</summary>
    private static ReadOnlySpan<int> Between(int[] edges, int count, int width)
    {
        edges[0] = 0;
        edges[count + 1] = width;
        var (start, length) = (0, count + 2);
        if (edges[1] == 0 && count > 0)
            (start, length) = (2, length - 2);
        if (length > 0 && edges[start + length - 2] == width)
            length -= 2;
        return edges.AsSpan(start, length);
    }
}
