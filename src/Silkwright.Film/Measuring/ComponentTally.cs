namespace Silkwright.Film.Measuring;

/// <summary>Counts finished components, and where the film itself is kept, keeps the dots and marks the specks.</summary>
/// <param name="specks">Marks the specks; none where the film is not kept.</param>
/// <param name="keeps">Components that are kept whole; none: none.</param>
internal sealed class ComponentTally(SpeckMarks? specks, Predicate<Blob>? keeps = null)
{
    public long Count { get; private set; }

    public long SpeckCount { get; private set; }

    public List<DotShape> Dots { get; } = [];

    public List<Blob> Kept { get; } = [];

    /// <summary>A pixel of each speck that is not marked yet.</summary>
    public List<(int X, int Y)> Specks { get; } = [];

    /// <summary>Marks the specks closed since the last time; the rows about them must be in the film.</summary>
    public void MarkSpecks()
    {
        foreach (var (x, y) in Specks)
            specks?.Mark(x, y);
        Specks.Clear();
    }

    public void Close(Blob blob)
    {
        if (blob.Area <= FilmComponents.SpeckArea)
        {
            SpeckCount++;
            if (specks is not null)
                Specks.Add((blob.SeedX, blob.SeedY));
            return;
        }

        Count++;
        if (keeps is not null && keeps(blob))
            Kept.Add(blob);
        if (specks is not null && blob.Width <= DotShape.LongestSide && blob.Height <= DotShape.LongestSide && Dots.Count < FilmComponents.MostDots)
        {
            Dots.Add(new DotShape(
                (float)(blob.SumX / blob.Area), (float)(blob.SumY / blob.Area), (int)blob.Area, (byte)blob.Width, (byte)blob.Height));
        }
    }
}
