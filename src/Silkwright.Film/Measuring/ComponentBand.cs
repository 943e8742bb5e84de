using Silkwright.Film.Readers;

namespace Silkwright.Film.Measuring;

/// <summary>Puts together the components of image and gap of one band of rows at once.</summary>
internal sealed class ComponentBand
{
    private readonly int width;
    private readonly int[] between;

    /// <param name="width">[px]</param>
    /// <param name="image">Takes the image's components as they are finished.</param>
    /// <param name="gap">Takes the gap's.</param>
    public ComponentBand(int width, ComponentTally image, ComponentTally gap)
    {
        this.width = width;
        between = new int[width + 4];
        (ImageTally, GapTally) = (image, gap);
        Image = new BandComponents(image.Close);
        Gap = new BandComponents(gap.Close);
    }

    public BandComponents Image { get; }

    public BandComponents Gap { get; }

    public ComponentTally ImageTally { get; }

    public ComponentTally GapTally { get; }

    /// <summary>Pixels of image so far.</summary>
    public long ImageArea { get; private set; }

    /// <summary>Marks the specks of both that have been closed; the rows about them must be in the film.</summary>
    public void MarkSpecks()
    {
        ImageTally.MarkSpecks();
        GapTally.MarkSpecks();
    }

    /// <summary>Takes the next row, as the image's runs.</summary>
    public void AddRow(int y, ReadOnlySpan<int> edges)
    {
        for (var i = 0; i < edges.Length; i += 2)
            ImageArea += edges[i + 1] - edges[i];
        Image.AddRow(edges, y);
        Gap.AddRow(RowRuns.Between(edges, between, width), y);
    }
}
