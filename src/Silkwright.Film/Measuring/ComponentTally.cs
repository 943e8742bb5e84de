namespace Silkwright.Film.Measuring;

/// <summary>Counts finished components, and where the film itself is kept, keeps the dots and marks the specks.</summary>
internal sealed class ComponentTally(SpeckMarks? specks)
{
    public long Count { get; private set; }

    public long SpeckCount { get; private set; }

    public List<DotShape> Dots { get; } = [];

    public void Close(Blob blob)
    {
        if (blob.Area <= FilmComponents.SpeckArea)
        {
            SpeckCount++;
            specks?.Mark(blob.SeedX, blob.SeedY);
            return;
        }

        Count++;
        if (specks is not null && blob.Width <= DotShape.LongestSide && blob.Height <= DotShape.LongestSide && Dots.Count < FilmComponents.MostDots)
        {
            Dots.Add(new DotShape(
                (float)(blob.SumX / blob.Area), (float)(blob.SumY / blob.Area), (int)blob.Area, (byte)blob.Width, (byte)blob.Height));
        }
    }
}
