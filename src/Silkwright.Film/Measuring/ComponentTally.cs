namespace Silkwright.Film.Measuring;

/// <summary>Counts finished components, and where the film itself is kept, keeps the dots and marks the specks.</summary>
/// <param name="specks">Marks the specks; none where the film is not kept.</param>
/// <param name="keeps">Components that are kept whole; none: none.</param>
internal sealed class ComponentTally(SpeckMarks? specks, Predicate<Blob>? keeps = null)
{
    private List<DotShape> dots = [];

    public long Count { get; private set; }

    public long SpeckCount { get; private set; }

    public int DotCount => dots.Count;

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

    /// <summary>Puts the dots in order from the top down once no more come.</summary>
    public void PutDotsInOrder()
    {
        dots.Sort();
        dots.TrimExcess();
    }

    /// <summary>Hands over the dots and keeps none.</summary>
    public List<DotShape> TakeDots()
    {
        var taken = dots;
        dots = [];
        return taken;
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
        if (specks is not null && blob.Width <= DotShape.LongestSide && blob.Height <= DotShape.LongestSide && dots.Count < FilmComponents.MostDots)
        {
            dots.Add(new DotShape(
                (float)(blob.SumX / blob.Area), (float)(blob.SumY / blob.Area), (ushort)blob.Area, (byte)blob.Width, (byte)blob.Height));
        }
    }
}
