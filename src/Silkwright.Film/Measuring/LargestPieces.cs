namespace Silkwright.Film.Measuring;

/// <summary>Of any number of pieces, the largest few. Several threads may add at once.</summary>
internal sealed class LargestPieces(int most)
{
    private readonly Lock adding = new();
    private readonly PriorityQueue<Blob, Rank> kept = new();

    public void Add(Blob piece)
    {
        lock (adding)
        {
            var rank = new Rank(piece.Area, piece.SeedY, piece.SeedX);
            if (kept.Count < most)
                kept.Enqueue(piece, rank);
            else
                _ = kept.EnqueueDequeue(piece, rank);
        }
    }

    /// <summary>The largest first; of equal ones the uppermost, then the leftmost.</summary>
    public IEnumerable<Blob> InOrder() => kept.UnorderedItems.OrderByDescending(item => item.Priority).Select(item => item.Element);

    private readonly record struct Rank(long Area, int SeedY, int SeedX) : IComparable<Rank>
    {
        public int CompareTo(Rank other) => (Area, other.SeedY, other.SeedX).CompareTo((other.Area, SeedY, SeedX));
    }
}
